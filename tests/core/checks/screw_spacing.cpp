// Limits on how far apart screws, rows and the ends of laps may be.
#include <catch2/catch.hpp>

#include "screwed_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

// UFGS 07413 3.1.1.1: 8 in at supports; at 12 in apart a cover of 36 in wants five screws.
TEST_CASE("spaces wider than the limits are one finding a wall, the worst with its place") {
  Job job = quietWall();
  job.patterns[0].limits = ScrewPattern::Limits::Ufgs07413;
  const auto found = foundOf(job, "screw-spacing");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "screw-spacing|A|");
  CHECK(lengthOf(found[0], "space") == Length::inches(12));
  CHECK(lengthOf(found[0], "limit") == Length::inches(8));
  CHECK(found[0].source == "UFGS 07413 3.1.1.1");
  CHECK(countOf(found[0]) == 4 * (13 * 3));  // base, two girts, eave: 40 screws in a row, 39 spaces
  CHECK(wordsOf(found[0], "remedy").find("at least 5 screws") != std::string::npos);
  CHECK(saysAll(found[0]));
}

TEST_CASE("the plan's own limit is kept at the limit, and broken just past it") {
  Job job = quietWall();
  job.patterns[0].spacingLimit = Length::inches(12);
  CHECK(foundOf(job, "screw-spacing").empty());
  job.patterns[0].spacingLimit -= Length::nanometres(1);
  CHECK(foundOf(job, "screw-spacing").size() == 1);
  job.patterns[0].spacingApproval = "R. Example, letter of 2 March 2026";
  CHECK(foundOf(job, "screw-spacing").empty());
}

TEST_CASE("the worst space is the one farthest over its own limit") {
  Job job = quietWall();
  job.patterns[0].limits = ScrewPattern::Limits::Ufgs07413;
  rowOf(job, SupportKind::Girt).offsets = {Length::inches(6), Length::inches(30)};
  const auto found = foundOf(job, "screw-spacing");
  REQUIRE(found.size() == 1);
  CHECK(lengthOf(found[0], "space") == Length::inches(24));
  CHECK(wordsOf(found[0], "row") == "girt g4");
}

// BRANZ Build 146: rows at most 1200 mm apart.
TEST_CASE("rows too far apart up a sheet are one finding a wall") {
  Job job = quietWall();
  job.patterns[0].limits = ScrewPattern::Limits::Branz146;
  // 4 and 8 ft: 1219.2 mm apart. Moved to 1200 mm, the base's row at 1 in stands 1174.6 mm below the first.
  Wall& wall = job.walls[0];
  wall.girts[0].height = Length::millimetres(1200);
  wall.girts[1].height = Length::millimetres(2400);
  wall.top[0].z = wall.top[1].z = Length::millimetres(3600);
  CHECK(foundOf(job, "rows-too-far-apart").empty());
  wall.girts[1].height += Length::millimetres(1);
  const auto found = foundOf(job, "rows-too-far-apart");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(lengthOf(found[0], "space") == Length::millimetres(1201));
  CHECK(countOf(found[0]) == 14);
  CHECK(found[0].source == "BRANZ Build 146");
  CHECK(saysAll(found[0]));
  job.patterns[0].spacingApproval = "R. Example, letter of 2 March 2026";
  CHECK(foundOf(job, "rows-too-far-apart").empty());
}

TEST_CASE("a low sheet too wants a row between top and bottom") {
  Job job = quietWall();
  job.patterns[0].limits = ScrewPattern::Limits::Branz146;
  Wall& wall = job.walls[0];
  wall.top[0].z = wall.top[1].z = Length::millimetres(1100);
  wall.girts.resize(1);
  wall.girts[0].height = Length::millimetres(600);
  CHECK(foundOf(job, "no-row-between").empty());
  wall.girts.clear();
  const auto found = foundOf(job, "no-row-between");
  REQUIRE(found.size() == 1);
  CHECK(saysAll(found[0]));
}

TEST_CASE("a sheet that no screw goes through is named") {
  Job job = quietWall();
  job.walls[0].width = Length::inches(36 * 13 + 8);
  CHECK(foundOf(job, "sheet-without-screws").empty());  // the last module line at 469-1/2, its screw at 475-1/2 of 476
  job.walls[0].width = Length::inches(36 * 13 + 7);
  const auto found = foundOf(job, "sheet-without-screws");
  REQUIRE(found.size() == 1);
  CHECK(wordsOf(found[0], "sheets") == "sheet A14");
  CHECK(saysAll(found[0]));
}

// NZ Metal Roof and Wall Cladding Code of Practice: about 150 mm.
TEST_CASE("end laps shorter than the set wants are told where the wall has end laps") {
  Job job = quietWall();
  job.patterns[0].limits = ScrewPattern::Limits::NzCode;
  job.walls[0].endLaps.lap = Length::millimetres(149);
  CHECK(foundOf(job, "end-lap-short").empty());
  job.profiles[0].lengths.longest = Length::feet(10);
  const auto found = foundOf(job, "end-lap-short");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(saysAll(found[0]));
  job.walls[0].endLaps.lap = Length::millimetres(150);
  CHECK(foundOf(job, "end-lap-short").empty());
}
