// What holds for the blanks of every building, by a checker that calls nothing of core/cutting.
#include <catch2/catch.hpp>
#include <map>

#include "core/cutting/share_blanks.h"
#include "tests/fuzz/layout_text.h"
#include "tests/fuzz/random_building.h"
#include "tests/fuzz/sharing_checker.h"

namespace ribwright::fuzz {
namespace {

// Often of one profile and colour, so that there is something to share.
void shareIn(Job& job, Dice& dice) {
  Sharing& sharing = job.settings.sharing;
  sharing.reach = dice.of({Sharing::Reach::On, Sharing::Reach::On, Sharing::Reach::On, Sharing::Reach::PerWall});
  sharing.rakePairs = !dice.oneIn(5);
  sharing.ripPairs = !dice.oneIn(5);
  sharing.drops = !dice.oneIn(5);
  sharing.gangs = !dice.oneIn(5);
  job.settings.kerf = dice.of({Length(), Length::inches(0, 8), Length::millimetres(3), Length::nanometres(3'333'333)});
  for (Profile& profile : job.profiles) {
    if (dice.oneIn(2)) profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
    profile.lengths.shortest = dice.of({Length::feet(2), Length::feet(4), Length::feet(7), profile.lengths.increment});
    if (dice.oneIn(6)) profile.lengths.stocked = {Length::feet(16), Length::feet(30)};
  }
  const std::string profile = dice.of(job.profiles).id;
  const bool alike = dice.oneIn(2);
  for (Wall& wall : job.walls) {
    wall.shares = !dice.oneIn(3);
    if (dice.oneIn(2)) wall.rakeCut = RakeCut::BeforeHanging;
    for (Band& band : wall.bands) {
      if (alike) {
        band.profile = profile;
        band.colour = "sand";
        band.thickness.reset();
      }
      band.directionalFinish = dice.oneIn(5);
    }
  }
}

std::vector<SharedBlank> sharedOf(const Job& job, const Plan& plan, Dice& dice) {
  std::vector<SharedBlank> all;
  for (Blank& blank : shareBlanks(job, plan.layouts())) {
    SharedBlank& shared = all.emplace_back();
    shared.spare = dice.oneIn(2) ? Length() : dice.length(Length(), Length::feet(2));
    shared.cuts = blankCuts(job, plan.layouts(), blank, blank.length + shared.spare);
    shared.blank = std::move(blank);
  }
  return all;
}

}  // namespace

TEST_CASE("Blanks of random buildings are shared as the trade model says") {
  std::map<Blank::Way, int> seen;
  int turned = 0, opposite = 0, bad = 0;
  for (int i = 0; i < 1500 && bad < 5; ++i) {
    Dice dice(kSeed + 40, i);
    Job job = randomJob(kSeed, i);
    shareIn(job, dice);
    if (dice.oneIn(5)) job = withHungSheets(job, plan(job), dice);
    const Plan planned = plan(job);
    const auto blanks = sharedOf(job, planned, dice);
    for (const SharedBlank& shared : blanks) {
      ++seen[shared.blank.way];
      if (shared.blank.way != Blank::Way::RakePair) continue;
      (shared.blank.parts[1].turned ? turned : opposite) += 1;
    }
    const std::string said = checkSharing(job, planned, blanks).text();
    INFO("building " << i << "\n" << said << jobText(job));
    CHECK(said == "");
    bad += !said.empty();
  }
  // The buildings bring all kinds about.
  CHECK(seen[Blank::Way::RakePair] > 500);
  CHECK(turned > 100);
  CHECK(opposite > 100);
  CHECK(seen[Blank::Way::RipPair] > 100);
  CHECK(seen[Blank::Way::Drop] > 100);
  CHECK(seen[Blank::Way::Gang] > 100);
}

TEST_CASE("Where nothing shares each piece has its own blank") {
  for (int i = 0; i < 100; ++i) {
    const Job job = randomJob(kSeed, i);
    const Plan planned = plan(job);
    for (const Blank& blank : shareBlanks(job, planned.layouts())) {
      REQUIRE(blank.way == Blank::Way::Alone);
      REQUIRE(blank.parts.size() == 1);
    }
  }
}

}  // namespace ribwright::fuzz
