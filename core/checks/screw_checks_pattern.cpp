// Which pattern a wall's sheets are screwed by, and what it leaves unsaid for this wall.
#include <set>

#include "core/checks/screw_words.h"

namespace ribwright {
namespace {

// Runs of one band have one pattern: each band once, as its first run has it.
void checkPatternsOfBands(const WallLook& look, std::vector<Finding>& findings) {
  std::set<int> seen;
  for (std::size_t i = 0; i < look.runs.size() && i < look.holes.patterns.size(); ++i) {
    const int band = look.runs[i].run->band;
    if (!seen.insert(band).second) continue;
    const RunPattern& run = look.holes.patterns[i];
    if (run.pattern.empty()) {
      findings.push_back(look.finding(Grade::Look, "no-pattern", "", {{"band", bandWords(look.wall, band)}}, ""));
      findings.back().part = bandPart(look.wall, band);
    }
    if (run.otherProfile) {
      findings.push_back(look.finding(
          Grade::Stop, "pattern-of-other-profile", run.pattern,
          {{"band", bandWords(look.wall, band)}, {"pattern", run.pattern}, {"profile", look.runs[i].profile->id}}, ""));
      findings.back().part = bandPart(look.wall, band);
    }
  }
}

// One finding for all kinds: its key names them, so that a kind that comes later is not silenced with them.
void checkKindsStated(const WallLook& look, std::vector<Finding>& findings) {
  if (look.holes.unstated.empty()) return;
  std::vector<WordValue> names;
  std::string part;
  for (const HoleKind kind : look.holes.unstated) {
    names.push_back(kindWords(kind));
    part.append(part.empty() ? "" : " ").append(kindId(kind));
  }
  findings.push_back(
      look.finding(Grade::Look, "pattern-kind-unstated", "", {{"kinds", listed(names, names.size())}}, ""));
  findings.back().part = part;
}

void checkCornerZone(const WallLook& look, std::vector<Finding>& findings) {
  if (look.holes.patterns.empty() || look.holes.cornerZone) return;
  const bool en = look.job.settings.cornerZones.rule == CornerZones::Rule::En1991;
  findings.push_back(look.finding(Grade::Look, "corner-zone-unknown", "", {}, en ? "EN 1991-1-4" : "ASCE 7"));
}

}  // namespace

void checkScrewPattern(const WallLook& look, std::vector<Finding>& findings) {
  checkPatternsOfBands(look, findings);
  checkKindsStated(look, findings);
  checkCornerZone(look, findings);
}

}  // namespace ribwright
