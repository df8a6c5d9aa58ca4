// Facts from site, and one statement changed.
#include <string>

#include "tests/core/tape_lengths.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

// By how much a sheet hangs off its place: mostly a little, within what a lap can take; now and then it leaves a gap.
Length measuredOff(Dice& dice) {
  return dice.oneIn(30) ? dice.length(-in(3), in(4)) : dice.length(-in(0, 3), in(0, 3));
}

void editWall(Wall& wall, Dice& dice) {
  switch (dice.between(0, 9)) {
    case 0:
      wall.rakeHoldDown += in(0, 3);
      break;
    case 1:
      wall.reachLeft += in(0, 8);
      break;
    case 2:
      wall.base.drop += in(1);
      break;
    case 3:
      wall.start = {Start::Rule::Typed, in(dice.between(0, 8)), "", Start::Side::Left};
      break;
    case 4:
      wall.hang = wall.hang == Hang::LeftToRight ? Hang::RightToLeft : Hang::LeftToRight;
      break;
    case 5:
      wall.bands.front().colour = "green";
      break;
    case 6:
      wall.endLaps.lap += in(1);
      break;
    case 7:
      if (!wall.openings.empty()) wall.openings.pop_back();
      break;
    case 8:
      if (!wall.openings.empty()) wall.openings.front().width += in(dice.between(1, 9));
      break;
    default:
      wall.penetrations.clear();
  }
}

}  // namespace

Job withHungSheets(Job job, const Plan& plan, Dice& dice, bool onTheirPlaces) {
  const std::size_t chosen =
      static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(plan.walls.size()) - 1));
  const WallLayout& layout = plan.walls[chosen]->layout;
  if (layout.runs.empty()) return job;
  const SheetRun& run = layout.runs.front();
  const bool onward = layout.direction.hand == Hand::LeftToRight;
  const auto hung = static_cast<std::size_t>(dice.between(1, static_cast<std::int64_t>(run.modules.size())));
  const Length lead = run.modules.empty() ? Length() : [&] {
    for (const Profile& profile : job.profiles) {
      if (profile.id == job.walls[chosen].bands[static_cast<std::size_t>(run.band)].profile) return profile.under;
    }
    return Length();
  }();
  Length off;
  for (std::size_t i = 0; i < hung && i < run.modules.size(); ++i) {
    const Module& module = run.modules[i];
    if (!onTheirPlaces) off += measuredOff(dice);
    if (dice.oneIn(12)) continue;  // hangs, but nobody measured it
    const Length leading = module.leadLine + (onward ? lead : -lead) + off;
    job.facts.hung.push_back({layout.letter + std::to_string(module.number), leading, "A. Fitter", "2024-06-01"});
  }
  return job;
}

Job edited(Job job, Dice& dice) {
  switch (dice.between(0, 7)) {
    case 0:
      job.settings.jambClearance += in(0, 1);
      break;
    case 1:
      job.settings.rakeAllowance += in(1);
      break;
    case 2:
      job.building.roof.eave += in(1);
      break;
    case 3:
      job.site.sightPoints = {{"gate", {Length::feet(900), Length::feet(dice.between(-900, 900))}, 1}};
      break;
    case 4:
      job.profiles.front().lengths.increment = in(0, 4);
      break;
    case 5:
      job.walls.pop_back();
      break;
    default:
      editWall(job.walls[static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(job.walls.size()) - 1))],
               dice);
  }
  return job;
}

}  // namespace ribwright::fuzz
