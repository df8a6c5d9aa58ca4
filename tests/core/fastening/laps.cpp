// Screws through a side lap: which sheets they go through, who owns them, and the zone where they bite an edge.
#include <catch2/catch.hpp>

#include "core/fastening/chosen_pattern.h"
#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job longLeg(std::vector<Length> offsets) {
  Job job = screwed(freeWall(Length::feet(30)), everywhere(std::move(offsets)));
  lengthenLeg(job.profiles[0]);
  job.walls[0].girts = {girt("g1", Length::feet(6))};
  return job;
}

std::vector<Hole> onGirt(const ScrewedWall& wall) { return wall.of(HoleKind::Girt); }

}  // namespace

// AISI S100-16: 1.5 d from an edge. 1.5 x 0.216 = 0.324 in: through the lap up to 1.875 - 0.324 = 1.551 in; clear of it
// from 2.199 in; between the two it bites.
TEST_CASE("a screw near the module line goes through the leg below, or bites its edge, or stands clear") {
  const Length through = Length::inches(1, 35), bites = Length::inches(1, 36), clear = Length::inches(2, 13);
  const ScrewedWall lap(longLeg({through}));
  REQUIRE(onGirt(lap).size() == 10);
  CHECK(onGirt(lap)[1].throughLap);
  CHECK(lap.owner(onGirt(lap)[1]).mark == "A2");
  CHECK(lap.twin(onGirt(lap)[1]).mark == "A1");
  CHECK(alongSheet(lap.layout, onGirt(lap)[1], 1) == Length::inches(36) + through);
  CHECK_FALSE(onGirt(lap)[0].throughLap);  // the first sheet has none before it
  CHECK(onGirt(lap)[0].sheets == 1);

  const ScrewedWall bitten(longLeg({bites}));
  CHECK(onGirt(bitten).size() == 1);  // again only the first sheet
  CHECK(bitten.refused(Refusal::Why::NearEdge).size() >= 9);
  CHECK(bitten.refused(Refusal::Why::NearEdge)[0].x == bites);

  const ScrewedWall beside(longLeg({clear}));
  REQUIRE(onGirt(beside).size() == 10);
  CHECK_FALSE(onGirt(beside)[1].throughLap);
}

// The next sheet's lip reaches 1-1/2 in back over this one: through it from 36 - 1.5 + 0.324 = 34.824 in on.
TEST_CASE("a screw near the next module line goes through the lip above it and belongs to the lower sheet") {
  Job job = longLeg({Length::inches(34, 54)});
  // No rib at the module line, so that the pan goes on through the lap.
  job.profiles[0].section = {{-job.profiles[0].over, Length()},
                             {job.profiles[0].cover + job.profiles[0].under, Length()}};
  const ScrewedWall wall(job);
  const Hole hole = onGirt(wall).at(1);
  CHECK(hole.throughLap);
  CHECK(wall.owner(hole).mark == "A2");
  CHECK(wall.twin(hole).mark == "A3");
  CHECK(hole.upper == 1);  // sheet 3 lies on top, and gets the hole when only upper sheets do
  CHECK(alongSheet(wall.layout, hole, 1) == -Length::inches(1, 10));
}

TEST_CASE("a screw counts once, whichever sheets get holes") {
  Job job = longLeg({Length::inches(1, 35), Length::inches(14)});
  const ScrewedWall upper(job);
  job.patterns[0].lapHoles = ScrewPattern::LapHoles::BothSheets;
  const ScrewedWall both(job);
  CHECK(upper.holes.holes == both.holes.holes);
}

// 1.5 d of an odd number of nanometres counts up.
TEST_CASE("distances that a screw keeps: 1.5 d, and max(3 d, 1 in)") {
  Screw screw = number12();
  CHECK(fromEdge(screw) == Length::nanometres(8'229'600));
  CHECK(apart(screw, screw) == Length::inches(1));
  screw.diameter = Length::nanometres(10'000'001);
  CHECK(fromEdge(screw) == Length::nanometres(15'000'002));
  CHECK(apart(number12(), screw) == Length::nanometres(30'000'003));
}
