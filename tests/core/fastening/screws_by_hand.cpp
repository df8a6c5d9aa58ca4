// One hole of each kind by pencil, on the gable end that everyone tests alike: 40 ft wide, eave 12 ft, 4:12, cover 36
// in, lip 1-1/2, leg 3/4, drop 1-3/4, flush, hung left to right, hold-down 0. Ribs 2 in wide at 12 in. Girt g1 is typed
// by its web line at 7 ft 4 in, flange down; girt g2 by its bottom at 12 ft 2 in, flange up.
#include <catch2/catch.hpp>

#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

const Length in2 = Length::inches(2), in14 = Length::inches(14), in26 = Length::inches(26);

Job gable() {
  Job job = screwed(gable40(), everywhere({in2, in14, in26}));
  job.patterns[0].stitchSpacing = Length::inches(18);
  job.patterns[0].stitchScrew = "14";
  job.walls[0].girts = {girt("g1", Length::feet(7, 4), Girt::TypedBy::WebLine, Girt::Flange::Down),
                        girt("g2", Length::feet(12, 2), Girt::TypedBy::Bottom, Girt::Flange::Up)};
  return job;
}

Length millionths(std::int64_t inches) { return scaled(Length::inches(1), inches, 1'000'000); }

}  // namespace

// Web line 88 in, flange down to 85-1/2; 0.2625 in of bend at both edges: face 85.7625 to 87.7375, row 86-3/4.
TEST_CASE("by hand: a hole on girt g1 in sheet 6 stands at x 14 in, 88-1/2 in from its lower end") {
  const ScrewedWall wall(gable());
  CHECK(wall.row("g1").stretches.at(0).low == millionths(85'762'500));
  CHECK(wall.row("g1").stretches.at(0).high == millionths(87'737'500));
  const std::vector<Hole> holes = wall.of(HoleKind::Girt, "A6");
  REQUIRE(holes.size() == 6);  // three on each girt
  const Hole& hole = holes[1];
  // Module line of sheet 6: 1-1/2 + 5 x 36 = 181-1/2.
  CHECK(hole.u == Length::inches(195, 32));
  CHECK(hole.z == Length::inches(86, 48));
  CHECK(alongSheet(wall.layout, hole, 0) == in14);
  CHECK(hole.z - wall.owner(hole).bottom == Length::inches(88, 32));
  CHECK(hole.u - wall.owner(hole).left == Length::inches(15, 32));
  CHECK(hole.sheets == 1);
  CHECK_FALSE(hole.inPlace);
}

// Bottom 146 in, flange up: heel below, lip above: face 146.2625 to 148.2375, row 147-1/4.
TEST_CASE("by hand: girt g2 is crossed by the rake, and holds where the sheets reach over it") {
  const ScrewedWall wall(gable());
  CHECK(wall.row("g2").stretches.at(0).row == Length::inches(147, 16));
  // Sheet 1, x = 2, u = 3-1/2: the sheet ends at 145.1667 there: no metal, so no place. x = 14, u = 15-1/2: it ends at
  // 149.1667, and its rake hole stands at 148.1667: 0.9167 above the row, less than 1 in, so the rake's screw serves
  // both. x = 26, u = 27-1/2: the rake's hole stands at 152.1667, and the girt has its own.
  const std::vector<Hole> holes = wall.of(HoleKind::Girt, "A1");
  REQUIRE(holes.size() == 4);
  CHECK(holes[3].u == Length::inches(27, 32));
  CHECK(holes[3].z == Length::inches(147, 16));
  CHECK(wall.holes.refusals.empty());
}

// Base angle: row 1 in above the concrete; the sheet ends 1-3/4 below it.
TEST_CASE("by hand: base holes stand 2-3/4 in above the sheet's lower end") {
  const ScrewedWall wall(gable());
  const std::vector<Hole> holes = wall.of(HoleKind::Base, "A1");
  REQUIRE(holes.size() == 3);
  CHECK(holes[0].u == Length::inches(3, 32));
  CHECK(holes[0].z - wall.owner(holes[0]).bottom == Length::inches(2, 48));
}

// Rake angle: row 1 in below the steel line, upright. At u = 3-1/2 the line is 144 + 3.5/3 = 145.166667 in.
TEST_CASE("by hand: rake holes follow the slope") {
  const ScrewedWall wall(gable());
  const std::vector<Hole> holes = wall.of(HoleKind::Rake, "A1");
  REQUIRE(holes.size() == 3);
  CHECK(holes[0].z == Length::nanometres(3'657'600'000 + 29'633'333 - 25'400'000));
  CHECK(holes[1].z - holes[0].z == Length::inches(4));  // 12 in along, 4 in up
  CHECK(holes[0].inPlace);
}

// Lap of sheets 6 and 7 at 217-1/2 in: both reach from -1-3/4 to 144 + 217.5/3 = 216-1/2: 218-1/4 in, 13 spaces of
// 16.788 in at most 18, 12 stitch screws, in the middle of the crown over the module line.
TEST_CASE("by hand: stitch screws divide a lap evenly") {
  const ScrewedWall wall(gable());
  const std::vector<Hole> holes = wall.of(HoleKind::Stitch, "A7");
  REQUIRE(holes.size() == 12);
  CHECK(holes[0].u == Length::inches(217, 32));
  CHECK(holes[0].z == -Length::inches(1, 48) + scaled(Length::inches(218, 16), 1, 13));
  CHECK(holes[0].throughLap);
  CHECK(wall.twin(holes[0]).mark == "A6");
  CHECK(holes[0].upper == 0);  // sheet 7 lies over sheet 6
  CHECK(alongSheet(wall.layout, holes[0], 1) == Length::inches(36));
}

// A window 4 ft wide from 10 ft, sill 3 ft, head 6 ft; flanges of 2-1/2 in. Cut edge of the sheets 119-3/4 in. Middle
// of the left flange: 118-3/4; sheet 4 there: module line 109-1/2, so x = 9-1/4, on the pan from 1 to 11 in: it stays.
TEST_CASE("by hand: jamb, head and sill rows of a window") {
  Job job = gable();
  Opening window;
  window.id = "W1";
  window.place.distance = Length::feet(10);
  window.width = Length::feet(4);
  window.height = Length::feet(3);
  window.sill = Length::feet(3);
  job.walls[0].openings = {window};
  const ScrewedWall wall(job);
  std::vector<Hole> left = wall.of(HoleKind::Jamb, "A4");
  REQUIRE(left.size() == 4);  // 38 in to 70 in: 32 in at most 12: 3 spaces of 10-2/3
  CHECK(left[0].u == Length::inches(118, 48));
  CHECK(left[0].z == Length::inches(38));
  CHECK(left[1].z == Length::inches(38) + scaled(Length::inches(32), 1, 3));
  CHECK(left[3].z == Length::inches(70));
  // Head: flange 72 to 74-1/2, row 73-1/4; the sheet above ends at 72-1/2. Modules 4 and 5: x = 14 and 26 of sheet 4 (u
  // 123-1/2, 135-1/2), x = 2, 14 of sheet 5 (147-1/2, 159-1/2).
  std::vector<Hole> head = wall.of(HoleKind::Head);
  REQUIRE(head.size() == 4);
  CHECK(head[0].u == Length::inches(123, 32));
  CHECK(head[0].z == Length::inches(73, 16));
  // Sill: flange 33-1/2 to 36, row 34-3/4, and the sheet below ends at 36.
  std::vector<Hole> sill = wall.of(HoleKind::Sill);
  REQUIRE(sill.size() == 4);
  CHECK(sill[0].z == Length::inches(34, 48));
}

// Sheets of at most 12 ft lap on girt g1 at 86-3/4: the upper sheet ends 2 in below, the lower rises 4 in above that
// end.
TEST_CASE("by hand: an end lap is screwed on the girt's row, through both sheets, by its own pattern") {
  Job job = gable();
  job.profiles[0].lengths.longest = Length::feet(12);
  for (PatternRow& row : job.patterns[0].rows) {
    if (row.support == SupportKind::EndLap) row.offsets = {in2, Length::inches(8), in14, Length::inches(20), in26};
  }
  const ScrewedWall wall(job);
  std::vector<Hole> holes = wall.of(HoleKind::EndLap);
  REQUIRE_FALSE(holes.empty());
  const Hole& first = holes.front();
  CHECK(first.z == Length::inches(86, 48));
  CHECK(first.sheets == 2);
  CHECK_FALSE(first.throughLap);
  CHECK(wall.owner(first).bottom == Length::inches(84, 48));
  CHECK(wall.twin(first).highEdge == Length::inches(88, 48));
  CHECK(first.upper == 0);
  const std::string mark = wall.owner(first).mark;
  CHECK(wall.of(HoleKind::EndLap, mark).size() == 5);
}
