// The trade's rules, best of search: ranked by stops, seams near jambs, narrow rips, sheets ... On a plain level wall
// there are no jambs, and nothing makes one start wronger than another: so first come the narrow rips, then the sheets.
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/plan/plan.h"
#include "tests/fuzz/dice.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/random_building.h"

namespace ribwright::fuzz {
namespace {

struct Hung {
  int sheets = 0;
  Length narrowest;  // of its first and last sheet, metal to metal
};

// The sheets of a plain wall from an offset: the trade's rules in a few lines.
Hung hungFrom(Length offset, const Profile& profile, Length width) {
  Length line = offset <= profile.over ? offset : offset - profile.cover;
  const Length firstEnd = line + profile.cover + profile.under;
  Hung hung{1, std::min(firstEnd, width) - std::max(line - profile.over, Length())};
  while (line + profile.cover + profile.under < width) {
    line += profile.cover;
    ++hung.sheets;
    if (line + profile.cover + profile.under >= width)
      hung.narrowest = std::min(hung.narrowest, width - line + profile.over);
  }
  return hung;
}

Job plainWall(Dice& dice) {
  Job job = randomJob(kSeed, 0);
  job.units = dice.of({UnitSystem::FeetInches, UnitSystem::Millimetres});
  job.settings = Settings();
  job.site = Site();
  job.building = Building();
  job.facts = SiteFacts();
  Wall wall;
  wall.letter.assign(1, 'P');  // GCC 12 sees an overflow in = "P" that is not there
  wall.width = dice.length(Length::feet(8), Length::feet(40));
  wall.top = {{Length(), Length::feet(10)}, {*wall.width, Length::feet(10)}};
  wall.hang = dice.of({Hang::LeftToRight, Hang::RightToLeft});
  wall.start.rule = Start::Rule::BestOfSearch;
  Band band;
  band.profile = dice.of(job.profiles).id;
  wall.bands = {band};
  job.walls = {wall};
  return job;
}

}  // namespace

TEST_CASE("Best of search leaves no narrow rip where it can, and then hangs no sheet too many") {
  for (int i = 0; i < 120; ++i) {
    Dice dice(kSeed + 7, i);
    const Job job = plainWall(dice);
    const Wall& wall = job.walls.front();
    const auto profile = std::find_if(job.profiles.begin(), job.profiles.end(),
                                      [&](const Profile& p) { return p.id == wall.bands.front().profile; });
    const Plan plan = ribwright::plan(job);
    const SheetRun& run = plan.walls.front()->layout.runs.front();
    const Hung chosen = hungFrom(run.offset, *profile, *wall.width);
    INFO("seed " << kSeed + 7 << ", wall " << i << ", offset " << run.offset.nanometres() << "\n" << jobText(job));
    REQUIRE(chosen.sheets == static_cast<int>(run.modules.size()));

    const Length narrow = job.settings.cornerTrimLeg + Length::inches(2);
    const Length step = job.units == UnitSystem::FeetInches ? Length::inches(0, 8) : Length::millimetres(5);
    for (Length offset; offset < profile->cover; offset += step) {
      const Hung other = hungFrom(offset, *profile, *wall.width);
      if (other.narrowest < narrow) continue;
      INFO("offset " << offset.nanometres() << " has no narrow rip and takes " << other.sheets << " sheets");
      CHECK(chosen.narrowest >= narrow);
      CHECK(chosen.sheets <= other.sheets);
      if (chosen.narrowest < narrow || chosen.sheets > other.sheets) break;
    }
  }
}

}  // namespace ribwright::fuzz
