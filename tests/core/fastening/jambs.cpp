// Screws up the jambs: on the nearest flat seat over the flange.
#include <catch2/catch.hpp>

#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

// A window whose left jamb's steel stands at `left`.
Job withWindow(Length left, Length width = Length::feet(4)) {
  Job job =
      screwed(freeWall(Length::feet(40)), everywhere({Length::inches(2), Length::inches(14), Length::inches(26)}));
  Opening window;
  window.id = "W1";
  window.place.distance = left;
  window.width = width;
  window.height = Length::feet(3);
  window.sill = Length::feet(3);
  job.walls[0].openings = {window};
  return job;
}

std::vector<Hole> jambHoles(const ScrewedWall& wall, bool left) {
  std::vector<Hole> some = wall.of(HoleKind::Jamb);
  std::erase_if(some,
                [&](const Hole& h) { return wall.holes.supports.jambs[static_cast<std::size_t>(h.row)].left != left; });
  return some;
}

}  // namespace

// Sheet 4: module line 109-1/2, rib from 120-1/2 to 122-1/2, pan with washer 1/2 in from 122-1/2 + 5/16. Left jamb at
// 124: flange from 121-1/2, middle 122-3/4 under the rib; the nearest seat is 122-13/16.
TEST_CASE("a jamb screw moves off the rib to the nearest flat seat") {
  const ScrewedWall wall(withWindow(Length::inches(124)));
  const auto holes = jambHoles(wall, true);
  REQUIRE(holes.size() == 4);
  for (const Hole& hole : holes) CHECK(hole.u == Length::inches(122, 52));
}

// Flange from 120-1/2 to 123 and the cut edge at 122-3/4: seats begin at 122-13/16, and the rib lies over the rest.
TEST_CASE("a flange wholly under a rib has no screw, and it is said once") {
  const ScrewedWall wall(withWindow(Length::inches(123)));
  CHECK(jambHoles(wall, true).empty());
  REQUIRE(wall.refused(Refusal::Why::UnderRib).size() == 1);
  CHECK_FALSE(jambHoles(wall, false).empty());
}

TEST_CASE("jamb screws stand 2 in from head and sill, evenly, no wider than the limit") {
  Job job = withWindow(Length::feet(10));
  job.patterns[0].jambSpacingLimit = Length::inches(8);
  const auto holes = jambHoles(ScrewedWall(job), true);
  REQUIRE(holes.size() == 5);  // 38 to 70 in: 4 spaces of 8
  CHECK(holes[0].z == Length::inches(38));
  CHECK(holes[1].z == Length::inches(46));
  CHECK(holes[4].z == Length::inches(70));
}

TEST_CASE("a door's jamb screws begin 2 in above the concrete") {
  Job job = withWindow(Length::feet(10));
  job.walls[0].openings[0].sill = Length();
  job.walls[0].openings[0].height = Length::feet(7);
  const auto holes = jambHoles(ScrewedWall(job), true);
  REQUIRE_FALSE(holes.empty());
  CHECK(holes.front().z == Length::inches(2));
  CHECK(holes.back().z == Length::inches(82));
}

TEST_CASE("an opening too low for two screws has one in the middle of its jamb") {
  Job job = withWindow(Length::feet(10));
  job.walls[0].openings[0].height = Length::inches(4);
  const auto holes = jambHoles(ScrewedWall(job), true);
  REQUIRE(holes.size() == 1);
  CHECK(holes[0].z == Length::inches(38));
}

// The girt's screw at x = 2 of sheet 5 stands at 147-1/2, on the flange of the right jamb at 146 (146 to 148-1/2).
TEST_CASE("a girt's screw on a jamb's flange serves the jamb where it is near") {
  Job job = withWindow(Length::feet(10), Length::inches(26));
  job.walls[0].girts = {girt("g", Length::inches(48, 43))};  // 0.0 to 1 in from a jamb screw's height 48-2/3
  const ScrewedWall wall(job);
  bool onFlange = false;
  for (const Hole& hole : wall.of(HoleKind::Girt)) {
    if (hole.u != Length::inches(147, 32)) continue;
    onFlange = wall.row("g").stretches[static_cast<std::size_t>(hole.stretch)].steel == Stretch::Steel::RightJamb;
  }
  CHECK(onFlange);
  CHECK(jambHoles(wall, false).size() == 3);  // the second of four has merged
  CHECK(jambHoles(wall, true).size() == 4);
}
