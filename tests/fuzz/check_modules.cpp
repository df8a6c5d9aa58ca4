// The trade's rules: runs, starts, modules and their metal; the hanging numbers of the trade's rules.
#include <algorithm>
#include <set>

#include "tests/fuzz/layout_checker.h"

namespace ribwright::fuzz {
namespace {

class RunCheck {
 public:
  RunCheck(CheckedWall& wall, const StatedRun& stated, const SheetRun& run, int firstNumber, Complaints& complaints)
      : wall_(wall), stated_(stated), run_(run), number_(firstNumber), complaints_(complaints) {}

  RunGeometry geometry() {
    checkLimits();
    checkStart();
    walk();
    RunGeometry geometry;
    geometry.face = &wall_.face;
    geometry.floor = stated_.floor;
    geometry.ceiling = stated_.ceiling;
    geometry.cuts = wall_.cuts;
    geometry.left = stated_.along.left;
    geometry.right = stated_.along.right;
    for (const Module& module : run_.modules) {
      geometry.sheets.push_back({nm(module.metalLeft), nm(module.metalRight), tiersOf(module)});
      // Corners grow by what metal really reaches around them.
      geometry.left = std::min(geometry.left, nm(module.metalLeft));
      geometry.right = std::max(geometry.right, nm(module.metalRight));
    }
    for (const Length end : run_.lapEnds) geometry.lapEnds.push_back(nm(end));
    geometry.lap = nm(wall_.wall.endLaps.lap);
    geometry.legs = legsCutAway(geometry, stated_.along.hand);
    complaints_.check(nm(run_.faceLeft) == geometry.left && nm(run_.faceRight) == geometry.right,
                      "sheeted from u " + text(nm(run_.faceLeft)) + " to " + text(nm(run_.faceRight)) +
                          ", metal says " + text(geometry.left) + " to " + text(geometry.right));
    checkLapEnds();
    return geometry;
  }

 private:
  void checkLimits() {
    complaints_.check(run_.band == stated_.band, "run of another band");
    complaints_.check(nm(run_.left) == stated_.along.left && nm(run_.right) == stated_.along.right,
                      "run from u " + text(nm(run_.left)) + " to " + text(nm(run_.right)) + ", stated " +
                          text(stated_.along.left) + " to " + text(stated_.along.right));
    const auto limit = [](const std::optional<Length>& z) { return z ? std::optional(nm(*z)) : std::nullopt; };
    complaints_.check(limit(run_.floor) == stated_.floor && limit(run_.ceiling) == stated_.ceiling,
                      "other band limits");
  }

  void checkStart() {
    const Nm offset = nm(run_.offset), cover = nm(profileOf(wall_.job, wall_.wall, stated_.band)->cover);
    complaints_.check(0 <= offset && offset < cover, "offset " + text(offset) + " is not within a cover");
    const auto stated = statedOffset(wall_.job, wall_.wall, wall_.face, wall_.cuts, stated_);
    if (stated) {
      complaints_.check(offset == *stated, "offset " + text(offset) + ", the start rule gives " + text(*stated));
      return;
    }
    const Band& band = wall_.wall.bands[static_cast<std::size_t>(stated_.band)];
    if ((band.start ? *band.start : wall_.wall.start).rule != Start::Rule::BestOfSearch) return;
    // Once sheets hang there is nothing to search: the run has the offset of the first that does.
    for (const Module& module : run_.modules) {
      if (!module.hung) continue;
      const Nm along = stated_.along.t(nm(module.startLine)) - offset;
      complaints_.check(along % cover == 0, "offset " + text(offset) + " is not the first hung sheet's");
      return;
    }
    complaints_.check(isCandidate(wall_.job, wall_.wall, wall_.face, wall_.cuts, stated_, offset),
                      "offset " + text(offset) + " is no candidate of the search");
  }

  // Every module of the layout must be the next one on the walk; those passed over add no face, which the account
  // proves.
  void walk() {
    ModuleWalk walk(wall_.job, wall_.wall, stated_, nm(run_.offset));
    std::size_t next = 0;
    while (walk.goesOn(number_)) {
      const StatedModule own = walk.module(number_);
      if (next < run_.modules.size() && nm(run_.modules[next].startLine) == stated_.along.u(own.line)) {
        compare(own, run_.modules[next++]);
        ++number_;
      } else if (!complaints_.check(!own.hung, "sheet " + std::to_string(number_) + " hangs, but not in the layout")) {
        break;
      }
      walk.take(own);
    }
    complaints_.check(next == run_.modules.size(), "module " + text(static_cast<Nm>(next)) + " of " +
                                                       text(static_cast<Nm>(run_.modules.size())) +
                                                       " does not stand where its run goes on");
  }

  void compare(const StatedModule& own, const Module& found) {
    const Along& along = stated_.along;
    const bool onward = along.hand == Hand::LeftToRight;
    const Nm starting = onward ? nm(found.metalLeft) : nm(found.metalRight);
    const Nm leading = onward ? nm(found.metalRight) : nm(found.metalLeft);
    const std::string name = "module " + std::to_string(found.number);
    complaints_.check(found.number == number_, name + " should be number " + std::to_string(number_));
    complaints_.check(along.t(nm(found.leadLine)) == own.next, name + " has its next line elsewhere");
    complaints_.check(along.t(starting) == own.starting && along.t(leading) == own.leading,
                      name + " has metal t " + text(along.t(starting)) + " to " + text(along.t(leading)) + ", stated " +
                          text(own.starting) + " to " + text(own.leading));
    complaints_.check(found.hung == own.hung, name + " hangs or not");
    complaints_.check(found.startRipped == own.startRipped && found.leadRipped == own.leadRipped,
                      name + " ripped or not");
    const auto& translucent = wall_.wall.bands[static_cast<std::size_t>(stated_.band)].translucent;
    const int place = static_cast<int>(&found - run_.modules.data()) + 1;
    const bool light = std::find(translucent.begin(), translucent.end(), place) != translucent.end();
    complaints_.check(found.translucent == light, name + " translucent or not");
  }

  // A sheet is divided only where it must be: which of the run's end laps it has, its pieces say. Each reaches from its
  // own lower end to `lap` above the next one's.
  std::vector<Tier> tiersOf(const Module& module) {
    const auto index = static_cast<int>(&module - run_.modules.data());
    std::set<int> numbers;
    for (const Piece& piece : wall_.layout.pieces) {
      const bool same = &wall_.layout.runs[static_cast<std::size_t>(piece.run)] == &run_ && piece.module == index;
      if (same) numbers.insert(piece.tier);
    }
    const bool nothingLeft = numbers.empty() && module.hung;
    complaints_.check(module.tiered || nothingLeft || numbers == std::set<int>{0}, "tiers in an undivided sheet");
    std::vector<Tier> tiers;
    for (const int number : numbers) {
      if (!complaints_.check(number <= static_cast<int>(run_.lapEnds.size()), "a tier above the last end lap")) break;
      Tier tier;
      tier.number = number;
      if (number > 0) tier.from = nm(run_.lapEnds[static_cast<std::size_t>(number) - 1]);
      if (!tiers.empty()) tiers.back().to = tier.from + nm(wall_.wall.endLaps.lap);
      tiers.push_back(tier);
    }
    return tiers;
  }

  // The upper sheet ends `endBelowRow` below a girt's row; only girts without a member are made here, so the row is
  // their height.
  void checkLapEnds() {
    const EndLaps& laps = wall_.wall.endLaps;
    const auto& wanted = laps.girts;
    for (std::size_t i = 0; i < run_.lapEnds.size(); ++i) {
      const Length end = run_.lapEnds[i];
      const bool onGirt = std::any_of(wall_.wall.girts.begin(), wall_.wall.girts.end(), [&](const Girt& girt) {
        const bool meant = laps.where == EndLaps::Where::WhereNeeded ||
                           std::find(wanted.begin(), wanted.end(), girt.id) != wanted.end();
        return meant && girt.height - laps.endBelowRow == end;
      });
      complaints_.check(onGirt, "end lap at " + text(nm(end)) + " off any girt");
      complaints_.check(i == 0 || run_.lapEnds[i - 1] < end, "end laps do not rise");
    }
    complaints_.check(laps.where != EndLaps::Where::None || run_.lapEnds.empty(), "end laps though none are wanted");
    for (const Module& module : run_.modules) {
      complaints_.check(!module.tiered || !run_.lapEnds.empty(), "a module laps end over end nowhere");
    }
  }

  CheckedWall& wall_;
  const StatedRun& stated_;
  const SheetRun& run_;
  int number_;
  Complaints& complaints_;
};

}  // namespace

void checkModules(CheckedWall& wall, Complaints& complaints) {
  const std::vector<StatedRun> stated = statedRuns(wall.wall, wall.face, wall.layout.direction.hand);
  if (!complaints.check(stated.size() == wall.layout.runs.size(),
                        std::to_string(wall.layout.runs.size()) + " runs, stated " + std::to_string(stated.size()))) {
    return;
  }
  int number = 1;
  for (std::size_t i = 0; i < stated.size(); ++i) {
    wall.runs.push_back(RunCheck(wall, stated[i], wall.layout.runs[i], number, complaints).geometry());
    number += static_cast<int>(wall.layout.runs[i].modules.size());
  }
}

}  // namespace ribwright::fuzz
