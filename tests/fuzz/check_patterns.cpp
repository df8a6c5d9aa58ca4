#include <algorithm>

#include "tests/fuzz/hole_checker.h"
#include "tests/fuzz/stated_places.h"

namespace ribwright::fuzz {
namespace {

std::string textOrUnknown(const std::optional<Nm>& length) { return length ? std::to_string(*length) : "not known"; }

// Kinds of screws that are asked of a module and that its pattern does not state.
class UnstatedKinds {
 public:
  explicit UnstatedKinds(const ScrewedWall& wall) : wall_(wall) {
    for (const ScrewedRun& run : wall.runs) {
      if (!run.pattern) continue;
      for (const ScrewedModule& module : run.modules) look(run, module);
    }
  }

  std::vector<HoleKind> kinds() const { return {kinds_.begin(), kinds_.end()}; }

 private:
  void look(const ScrewedRun& run, const ScrewedModule& module) {
    for (const SupportRow& row : wall_.holes.supports.rows) {
      for (const Stretch& stretch : row.stretches) {
        const auto lap = row.kind == SupportKind::Girt ? lapOn(wall_, stretch, module) : std::nullopt;
        const SupportKind kind = lap ? SupportKind::EndLap : row.kind;
        if (!run.asked(kind, module.corner) && liesOver(run, module, row, stretch, lap)) kinds_.insert(holeKind(kind));
      }
    }
    if (run.asked(SupportKind::Jamb, module.corner)) return;
    for (const JambFlange& jamb : wall_.holes.supports.jambs) {
      const Span flange = flangeBesideCut(wall_, jamb);
      if (run.metal.overBox(flange, {nm(jamb.foot), nm(jamb.head)}, module.index)) kinds_.insert(HoleKind::Jamb);
    }
  }

  // The middle of what its cover has before the stretch is metal of its own.
  bool liesOver(const ScrewedRun& run, const ScrewedModule& module, const SupportRow& row, const Stretch& stretch,
                const std::optional<Nm>& lap) const {
    const Nm a = run.along.t(nm(stretch.from)), b = run.along.t(nm(stretch.to));
    const Nm from = std::max(std::min(a, b), module.line);
    const Nm to = std::min(std::max(a, b), module.line + nm(run.profile->cover));
    if (from >= to) return false;
    const Nm u = run.along.u(from + halved(to - from));
    const std::vector<int> through = run.metal.through(u, lap ? *lap : wall_.rowAt(row, stretch, u));
    return std::any_of(through.begin(), through.end(), [&](int i) { return wall_.piece(i).module == module.index; });
  }

  const ScrewedWall& wall_;
  std::set<HoleKind> kinds_;
};

}  // namespace

void checkPatterns(const ScrewedWall& wall, Complaints& complaints) {
  const std::optional<Length>& zone = wall.holes.cornerZone;
  const std::optional<Nm> found = zone ? std::optional(zone->nanometres()) : std::nullopt;
  complaints.check(found == wall.zone,
                   "corner zone " + textOrUnknown(found) + ", reckoned " + textOrUnknown(wall.zone));
  if (!complaints.check(wall.holes.patterns.size() == wall.runs.size(), "not one pattern a run")) return;
  for (std::size_t i = 0; i < wall.runs.size(); ++i) {
    const RunPattern& pattern = wall.holes.patterns[i];
    complaints.check(pattern.pattern == wall.runs[i].patternId, "run " + std::to_string(i) + " takes another pattern");
    complaints.check(pattern.otherProfile == wall.runs[i].otherProfile, "a pattern for another profile or not");
  }
  const std::vector<HoleKind> unstated = UnstatedKinds(wall).kinds();
  std::string said, own;
  for (const HoleKind kind : wall.holes.unstated) said += std::to_string(static_cast<int>(kind)) + " ";
  for (const HoleKind kind : unstated) own += std::to_string(static_cast<int>(kind)) + " ";
  complaints.check(said == own, "without screws by its patterns are kinds " + own + "and it says " + said);
}

}  // namespace ribwright::fuzz
