// What is stated of a wall and cannot be followed, or sits oddly.
#include <algorithm>
#include <set>

#include "core/checks/wall_look.h"

namespace ribwright {

namespace {

void checkBands(const WallLook& look, std::vector<Finding>& findings) {
  const auto& bands = look.wall.bands;
  if (look.wall.cladding == Cladding::Sheeted && !look.layout.sheeted) {
    findings.push_back(look.finding(Grade::Look, "no-sheets-stated", "", {}, ""));
  }
  for (std::size_t i = 1; i < bands.size(); ++i) {
    const std::string band = std::to_string(i + 1);
    const Length below = bands[i - 1].from.value_or(look.layout.face.bottom.lowest(Length(), look.layout.face.width));
    if (bands[i].from && *bands[i].from > below) continue;
    findings.push_back(look.finding(Grade::Stop, "band-limits", "band " + band, {{"band", band}}, ""));
  }
  for (const SheetRun& run : look.layout.runs) {
    for (const int module : bands[static_cast<std::size_t>(run.band)].translucent) {
      if (module >= 1 && static_cast<std::size_t>(module) <= run.modules.size()) continue;
      findings.push_back(look.finding(Grade::Look, "translucent-missing", std::to_string(module),
                                      {{"module", std::int64_t(module)}, {"count", std::int64_t(run.modules.size())}},
                                      ""));
    }
  }
}

void checkStart(const WallLook& look, std::vector<Finding>& findings) {
  for (const RunLook& one : look.runs) {
    const Band& band = look.wall.bands[static_cast<std::size_t>(one.run->band)];
    const Start& start = band.start ? *band.start : look.wall.start;
    if (!one.run->startFollowed) {
      findings.push_back(look.finding(Grade::Look, "start-not-followed", "", {{"opening", start.opening}}, ""));
    }
    if (start.rule != Start::Rule::ModuleLine) continue;
    const bool rightward = look.layout.direction.hand == Hand::LeftToRight;
    const bool atStart = rightward ? one.run->left == Length() : one.run->right == look.layout.face.width;
    const Length reach = !atStart ? Length() : rightward ? look.wall.reachLeft : look.wall.reachRight;
    if (reach >= one.profile->over) continue;
    findings.push_back(look.finding(Grade::Look, "reach-too-short", "", {{"reach", reach}, {"over", one.profile->over}},
                                    "common practice"));
  }
}

}  // namespace

void checkStatements(const WallLook& look, std::vector<Finding>& findings) {
  checkBands(look, findings);
  checkStart(look, findings);
  if (look.layout.direction.againstRule) {
    findings.push_back(look.finding(Grade::Look, "hang-against-rule", "", {}, "NAVEDTRA 14251 ch. 8; common practice"));
  }
  for (const Length joint : look.wall.expansionJoints) {
    if (joint > Length() && joint < look.layout.face.width) continue;
    findings.push_back(
        look.finding(Grade::Look, "joint-off-wall", "", {{"joint", joint}, {"width", look.layout.face.width}}, ""));
  }
}

void checkHungSheets(const WallLook& look, std::vector<Finding>& findings) {
  std::set<std::string> known;
  for (const SheetRun& run : look.layout.runs) {
    for (const Module& module : run.modules) known.insert(look.wall.letter + std::to_string(module.number));
    if (run.uncovered == Area()) continue;
    findings.push_back(look.finding(Grade::Stop, "face-left-open", "", {}, ""));
  }
  for (const HungSheet& hung : look.job.facts.hung) {
    const bool here = hung.mark.starts_with(look.wall.letter) &&
                      hung.mark.find_first_not_of("0123456789", look.wall.letter.size()) == std::string::npos;
    if (!here || known.contains(hung.mark)) continue;
    findings.push_back(look.finding(Grade::Stop, "hung-sheet-unknown", hung.mark, {{"mark", hung.mark}}, ""));
  }
}

}  // namespace ribwright
