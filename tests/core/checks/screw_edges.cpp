// Screws too near a cut, a rake or a sheet's end, and screws that miss the steel.
#include <catch2/catch.hpp>

#include "screwed_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Opening window(Length left) {
  Opening made;
  made.id = "W1";
  made.place.distance = left;
  made.width = Length::feet(4);
  made.height = Length::feet(3);
  made.sill = Length::feet(2, 6);  // girt g4 runs behind it
  return made;
}

}  // namespace

// AISI S100-16: 1.5 d = 3/8 in. The sheets end at the steel line, 1 in above the eave's row.
TEST_CASE("screws too near their sheets' ends are told once for the row") {
  Job job = quietWall();
  job.walls[0].eavePurlin = {inches(2), Length(), inches(1, 8), ""};
  job.walls[0].eaveHoldDown = inches(0, 48);
  CHECK(foundOf(job, "screw-near-cut").empty());  // 1-1/8 less 3/4: 3/8 in
  job.walls[0].eaveHoldDown = inches(0, 49);
  const auto found = foundOf(job, "screw-near-cut");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "screw-near-cut|A||eave");
  CHECK(lengthOf(found[0], "gap") == inches(0, 23));
  CHECK(lengthOf(found[0], "limit") == inches(0, 24));
  CHECK(countOf(found[0]) == 13 * 3 + 1);
  CHECK(wordsOf(found[0], "edge") == "a level edge");
  CHECK(wordsOf(found[0], "sheets") == "sheets A1, A2, A3, A4, A5, A6 and 8 more");
  CHECK(saysAll(found[0]));
}

// Sheet 3's module line stands at 73-1/2 in: its screw at 18 in at 91-1/2. The cut stands 1/4 in beside the jamb's
// steel.
TEST_CASE("screws too near the cut beside an opening are told for the girt, with their sheets") {
  Job job = quietWall();
  job.walls[0].openings = {window(inches(91, 32) + inches(0, 24) + inches(0, 16))};
  CHECK(foundOf(job, "screw-near-cut").empty());
  job.walls[0].openings = {window(inches(91, 32) + inches(0, 24) + inches(0, 15))};
  const auto found = foundOf(job, "screw-near-cut");
  REQUIRE(found.size() >= 1);
  const auto girt = std::find_if(found.begin(), found.end(), [](const Finding& f) { return f.mark == "g4"; });
  REQUIRE(girt != found.end());
  CHECK(wordsOf(*girt, "sheets") == "sheet A3");
  CHECK(lengthOf(*girt, "gap") == inches(0, 23));
  CHECK(wordsOf(*girt, "edge") == "an upright edge");
  CHECK(lengthOf(*girt, "u") == inches(91, 32));
}

// 1.5 d + drift = 3/8 + 1/8 in from both ends of a face 2 in high: rows from 1/2 to 1-1/2 in hold.
TEST_CASE("a row stated too near the end of its screw face stops, with the rows that hold") {
  Job job = quietWall();
  job.walls[0].baseAngle.row = inches(1, 32);
  CHECK(foundOf(job, "row-off-screw-face").empty());
  job.walls[0].baseAngle.row = inches(1, 40);
  const auto found = foundOf(job, "row-off-screw-face");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(found[0].key() == "row-off-screw-face|A||base");
  CHECK(lengthOf(found[0], "outside") == inches(0, 8));
  CHECK(lengthOf(found[0], "stated") == inches(1, 40));
  CHECK(lengthOf(found[0], "least") == inches(0, 32));
  CHECK(lengthOf(found[0], "most") == inches(1, 32));
  CHECK(saysAll(found[0]));
}

// 3:4 slope: 1/2 in square to the rake is 5/8 in upright.
TEST_CASE("along a rake the distance is kept square to the slope") {
  Job job = screwed(freeWall(Length::feet(40), {{Length(), Length::feet(12)}, {Length::feet(40), Length::feet(42)}}));
  job.profiles[0].lengths.longest = Length::feet(50);
  job.walls[0].rakeAngle.row = inches(1, 24);
  CHECK(foundOf(job, "row-off-screw-face").empty());
  job.walls[0].rakeAngle.row = inches(1, 25);
  const auto found = foundOf(job, "row-off-screw-face");
  REQUIRE(found.size() == 1);
  CHECK(found[0].key() == "row-off-screw-face|A||rake");
  CHECK(lengthOf(found[0], "margin") == inches(0, 40));
  CHECK(lengthOf(found[0], "outside") == inches(0, 1));
}

// Flange 2-1/2, less bend radius and thickness at heel and lip.
TEST_CASE("a screw face too narrow for any row stops, once for its girt") {
  Job job = quietWall();
  Member& member = job.members[0];
  member.flange = inches(1) + (member.bendRadius + member.thickness) * 2;
  CHECK(foundOf(job, "screw-face-narrow").empty());
  member.flange -= inches(0, 1);
  const auto found = foundOf(job, "screw-face-narrow");
  REQUIRE(found.size() == 2);  // both girts are of that member
  CHECK(found[0].grade == Grade::Stop);
  CHECK(found[0].mark == "g4");
  CHECK(lengthOf(found[0], "face") == inches(0, 63));
  CHECK(lengthOf(found[0], "need") == inches(1));
  CHECK(saysAll(found[0]));
}

// Column 2 at 92-1/4 in, flange 6 in: g4 and g8 end at 89-1/4. Sheet 3 has its screw at 91-1/2.
TEST_CASE("screws that miss the steel at a column are told once for the column, with the way to the steel") {
  Job job = quietWall();
  Wall& wall = job.walls[0];
  wall.girtSetting = GirtSetting::Flush;
  wall.columns.flange = inches(6);
  wall.columns.bays = {inches(94), inches(480 - 94)};
  CHECK(foundOf(job, "screw-off-steel-end").empty());  // 91-1/2 = 91 + 1/2 in: just on the flange
  wall.columns.bays = {inches(94, 1), inches(480 - 94)};
  const auto found = foundOf(job, "screw-off-steel-end");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "screw-off-steel-end|A||column 2");
  CHECK(wordsOf(found[0], "steel") == "column 2, girt g4, girt g8");
  CHECK(wordsOf(found[0], "side") == "right");
  CHECK(lengthOf(found[0], "shift") == inches(0, 1));
  CHECK(lengthOf(found[0], "margin") == inches(0, 32));
  CHECK(countOf(found[0]) == 2);
  CHECK(saysAll(found[0]));
}

TEST_CASE("screws past a girt's free end are told for that end") {
  Job job = quietWall();
  job.walls[0].girts[0].to = inches(92);
  CHECK(foundOf(job, "screw-off-steel-end").empty());  // 91-1/2 in holds: 1/2 in before the end
  job.walls[0].girts[0].to = inches(91, 63);
  const auto found = foundOf(job, "screw-off-steel-end");
  REQUIRE(found.size() == 1);
  CHECK(found[0].key() == "screw-off-steel-end|A|g4|right end");
  CHECK(wordsOf(found[0], "side") == "left");
}

TEST_CASE("screws that miss the steel at a jamb are told for the jamb") {
  Job job = quietWall();
  // The left jamb's flange, 2-1/2 in wide, begins 1/4 in before sheet 3's screw at 91-1/2 in.
  job.walls[0].openings = {window(inches(91, 16) + inches(2, 32))};
  const auto found = foundOf(job, "screw-off-steel-end");
  REQUIRE(found.size() >= 1);
  CHECK(found[0].key() == "screw-off-steel-end|A|W1|left jamb");
  CHECK(wordsOf(found[0], "steel") == "left jamb of W1, girt g4");
}

TEST_CASE("girts without a cross-section are named, once a wall") {
  Job job = quietWall();
  CHECK(foundOf(job, "girt-face-unknown").empty());
  for (Girt& girt : job.walls[0].girts) girt.member.clear();
  const auto found = foundOf(job, "girt-face-unknown");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(wordsOf(found[0], "girts") == "g4, g8");
  CHECK(saysAll(found[0]));
}

TEST_CASE("flush girts want the columns' flange") {
  Job job = quietWall();
  job.walls[0].columns.bays = {Length::feet(20), Length::feet(20)};
  CHECK(foundOf(job, "column-flange-not-stated").empty());  // girts run past the columns
  job.walls[0].girtSetting = GirtSetting::Flush;
  const auto found = foundOf(job, "column-flange-not-stated");
  REQUIRE(found.size() == 1);
  CHECK(saysAll(found[0]));
  job.walls[0].columns.flange = inches(6);
  CHECK(foundOf(job, "column-flange-not-stated").empty());
}
