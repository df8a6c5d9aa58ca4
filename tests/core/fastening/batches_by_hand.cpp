// Drill batches by pencil: a level wall 12 ft wide and 12 ft high, drop 1-3/4, cover 36, lip 1-1/2, leg 3/4, flush,
// hung left to right: four sheets, A4 ripped at its leading edge. Screws at 2, 14, 26 in from the module line, so
// 3-1/2, 15-1/2, 27-1/2 in from the starting edge. Girt g1 typed by its web line at 7 ft 4 in, flange down: 89-3/4 in
// above the chalk line; its screw face is 1.975 in high, less 2 x (1.5 x 0.216 + 1/8) in: rows may be 0.5385 in off its
// middle.
#include <catch2/catch.hpp>

#include "tests/core/fastening/measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job measured(std::vector<GirtReading> readings) {
  Job job = levelWall({girt("g1", Length::feet(7, 4), Girt::TypedBy::WebLine)});
  job.walls[0].survey.girts = {{"g1", std::move(readings)}};
  return job;
}

using Sheets = std::vector<std::int32_t>;

}  // namespace

// Row 86-3/4 in from concrete, 88-1/2 from the sheet's end.
TEST_CASE("by hand: a girt measured as planned is drilled as planned, four sheets in one stack") {
  const auto batches = batchesOf(measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))}));
  REQUIRE(batches.size() == 1);
  CHECK(batches[0].id == "A/1");
  CHECK(batches[0].isCleared());
  CHECK(batches[0].pieces == Sheets{0, 1, 2, 3});
  CHECK(batches[0].stack == Sheets{3, 2, 1, 0});
  REQUIRE(batches[0].rows.size() == 2);
  CHECK(batches[0].rows[0].key.kind == HoleKind::Base);
  CHECK(batches[0].rows[0].s == in(2, 12));
  CHECK(batches[0].rows[1].s == in(88, 8));
  CHECK(batches[0].rows[1].support == "g1");
  CHECK(batches[0].rows[1].offsets == std::vector<Length>{in(3, 8), in(15, 8), in(27, 8)});
  CHECK(batches[0].rows[1].sheets == 4);
}

// g1 falls 3/4 in from corner to corner: 0.0182 in at u 3-1/2, 0.7057 at 135-1/2. The middle, 0.3620 in low, is 88.138
// from the sheet's end.
TEST_CASE("by hand: a row lies in the middle of what its sheets allow, rounded to 1/16 in") {
  const auto batches = batchesOf(measured({at(in(0), in(89, 12)), at(in(144), in(89))}));
  REQUIRE(batches.size() == 1);
  CHECK(girtRow(batches[0]).s == in(88, 2));
  CHECK(batches[0].isCleared());
}

// Typed by its lower edge: bends take 0.2625 in, margins 0.449 in at each end; what is left of a flange of 1.4855 in is
// one nanometre less than 1/16 in. It ends at 88-5/16 in, so that no other mark lies in it.
TEST_CASE("by hand: where one mark of the tape is left the row is drilled there") {
  Job job = levelWall({girt("g1", Length::feet(7), Girt::TypedBy::Bottom)});
  job.members[0].flange = Length::nanometres(37'731'699);
  Girt& g1 = job.walls[0].girts[0];
  g1.height = in(88, 5) - in(1, 12) - job.members[0].flange + Length::nanometres(6'667'500 + 11'404'600);
  measure(job, "g1");
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 1);
  CHECK(girtRow(batches[0]).high == in(88, 5));
  CHECK(girtRow(batches[0]).low == in(88, 4) + Length::nanometres(1));
  CHECK(girtRow(batches[0]).s == in(88, 5));
  CHECK(batches[0].isCleared());
}

// Falling 1-1/2 in: sheets 1 to 3 lie 1.000 in apart, sheets 1 to 4 1.375, and 1.077 is what there is.
TEST_CASE("by hand: a stack goes on as far as its rows hold") {
  const auto batches = batchesOf(measured({at(in(0), in(89, 12)), at(in(144), in(88, 4))}));
  REQUIRE(batches.size() == 2);
  CHECK(batches[0].pieces == Sheets{0, 1, 2});
  CHECK(girtRow(batches[0]).s == in(87, 15));
  CHECK(batches[1].pieces == Sheets{3});
  // 1.2865 in low in the middle of sheet 4's holes (u 111-1/2 to 135-1/2): 87.2135
  CHECK(girtRow(batches[1]).s == in(87, 3));
  CHECK(batches[1].isCleared());
}

TEST_CASE("a stack is no higher than its limit") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  job.settings.stackLimit = 3;
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 2);
  CHECK(batches[0].pieces == Sheets{0, 1, 2});
}

TEST_CASE("a batch whose girt is not measured is held, and says from where to where to measure") {
  const auto batches = batchesOf(measured({at(in(0), in(89, 12)), at(in(100), in(89, 12))}));
  REQUIRE(batches.size() == 1);
  REQUIRE(whys(batches[0]) == std::vector<Why>{Why::NotMeasured});
  CHECK(batches[0].reasons[0].name == "g1");
  CHECK(batches[0].reasons[0].from == in(111, 8));
  CHECK(batches[0].reasons[0].to == in(135, 8));
  CHECK(whats(batches[0]) == std::vector<What>{What::Measure});
}

TEST_CASE("a batch without a confirmed pattern is held, and again when the numbers change") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  job.patterns[0].confirmation.reset();
  CHECK(whys(batchesOf(job).at(0)) == std::vector<Why>{Why::NoConfirmation});
  confirm(job);
  CHECK(batchesOf(job).at(0).isCleared());
  job.patterns[0].rows[1].offsets[0] = in(3);
  CHECK(whys(batchesOf(job).at(0)) == std::vector<Why>{Why::NoConfirmation});
}

// Within 1/2 in leaves 0.0385 in up and down of 88-1/2, within 5/8 in nothing.
TEST_CASE("all of a stick check's interval must hold") {
  const auto within = [](Length how) {
    return batchesOf(measured({at(in(0), in(89, 12), how), at(in(144), in(89, 12), how)}));
  };
  REQUIRE(within(in(0, 8)).size() == 1);
  CHECK(within(in(0, 8))[0].isCleared());
  const auto held = within(in(0, 10));
  REQUIRE(held.size() == 4);
  for (const DrillBatch& batch : held) {
    CHECK(whys(batch) == std::vector<Why>{Why::RowDoesNotHold});
    CHECK(whats(batch) == std::vector<What>{What::MeasureAgain, What::AskEngineer, What::DrillInPlace});
  }
}

// The chalk line was snapped 1/4 in too low: sheets hung by it would carry every row 1/4 in low.
TEST_CASE("sheets that end at the chalk line are held when it was snapped elsewhere than planned") {
  Job job = measured({at(in(0), in(90)), at(in(144), in(90))});
  job.walls[0].survey.chalkLine = -in(2);
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 1);
  REQUIRE(whys(batches[0]) == std::vector<Why>{Why::Chalk});
  CHECK(batches[0].reasons[0].by == -in(0, 4));
  CHECK(batches[0].remedies[0].by == in(0, 4));
}

// One step at the left corner, 6 in down: the concrete is level.
TEST_CASE("the chalk line is looked at where the base is one level run, however it is stated") {
  Job job = measured({at(in(0), in(95, 12)), at(in(144), in(95, 12))});
  job.walls[0].base.steps = {{Length(), -in(6)}};
  CHECK(batchesOf(job).at(0).isCleared());
  job.walls[0].survey.chalkLine = -in(7, 12);
  CHECK(batchesOf(job).at(0).isCleared());
  job.walls[0].survey.chalkLine = -in(8);
  CHECK(whys(batchesOf(job).at(0)) == std::vector<Why>{Why::Chalk});
}

// The slab falls 3/8 in from corner to corner; the base angle's row, 1 in above it, falls with it.
TEST_CASE("base rows follow the slab where it was measured") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  job.walls[0].survey.slab = {{in(0), Length()}, {in(144), -in(0, 6)}};
  const auto batches = batchesOf(job);
  REQUIRE(batches.size() == 1);
  CHECK(batches[0].rows[0].surveyed);
  // 0.0091 and 0.3529 in low: middle 0.181, 2.569 in from the end
  CHECK(batches[0].rows[0].s == in(2, 9));
}

TEST_CASE("an eave purlin that was not measured is drilled in place") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  const ScrewedWall wall(job);
  const auto batches = drillBatches(job, job.walls[0], wall.layout, wall.holes);
  for (const std::int32_t index : batches.at(0).inPlace)
    CHECK(wall.holes.holes[static_cast<std::size_t>(index)].kind == HoleKind::Eave);
  CHECK(batches[0].inPlace.size() == 12);
  job.walls[0].survey.girts.push_back({"eave", {at(in(0), in(145, 12)), at(in(144), in(145, 12))}});
  const auto withEave = batchesOf(job);
  CHECK(withEave.at(0).rows.size() == 3);
  CHECK(withEave[0].rows[2].s == in(144, 12));
  CHECK(withEave[0].isCleared());
}

// Its leg 4 in high, the row still 1 in up it by the plans: 1-3/4 + 1, not the leg's middle at 1-3/4 + 2. With the slab
// edge 3/8 in low at the right corner, at u 3-1/2 and 135-1/2 in so 0.0091 and 0.3529 in low: half of both is 0.181 in.
TEST_CASE("by hand: a base row stays as far up its angle as the plans have it") {
  Job job = measured({at(in(0), in(89, 12)), at(in(144), in(89, 12))});
  job.walls[0].baseAngle.face = in(4);
  CHECK(batchesOf(job).at(0).rows.at(0).s == in(2, 12));
  job.walls[0].survey.slab = {{Length(), Length()}, {in(144), -in(0, 6)}};
  CHECK(batchesOf(job).at(0).rows.at(0).s == in(2, 9));
  // Where that is too near the leg's lower end it is the lowest mark that holds: 1-3/4 + 0.324 + 1/8, up to a mark.
  job.walls[0].survey.slab.clear();
  job.walls[0].baseAngle.row = in(0, 8);
  CHECK(batchesOf(job).at(0).rows.at(0).s == in(2, 4));
}
