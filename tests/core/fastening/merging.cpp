// Holes of one sheet nearer than max(3 d, 1 in) merge; corner zones; which holes are drilled in the stack.
#include <catch2/catch.hpp>

#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job plain(std::vector<Length> offsets) { return screwed(freeWall(Length::feet(30)), everywhere(std::move(offsets))); }

}  // namespace

// The eave's row stands 1 in below 12 ft.
TEST_CASE("a girt's screw less than an inch from the eave's merges into it") {
  Job job = plain({Length::inches(14)});
  Girt high = girt("g", Length::feet(12) - Length::inches(1, 63));
  job.walls[0].girts = {high};
  CHECK(ScrewedWall(job).of(HoleKind::Girt).empty());
  CHECK(ScrewedWall(job).of(HoleKind::Eave).size() == 10);
  CHECK(ScrewedWall(job).holes.refusals.empty());
  job.walls[0].girts[0].height = Length::feet(12) - Length::inches(2);
  CHECK(ScrewedWall(job).of(HoleKind::Girt).size() == 10);
}

TEST_CASE("two screws of one row nearer than an inch are a fault of the pattern") {
  const ScrewedWall wall(plain({Length::inches(14), Length::inches(14, 63)}));
  CHECK(wall.of(HoleKind::Base).size() == 10);
  CHECK(wall.refused(Refusal::Why::NearHole).size() == 20);  // base and eave
  CHECK(ScrewedWall(plain({Length::inches(14), Length::inches(15)})).of(HoleKind::Base).size() == 20);
}

// 30 ft, covers of 36 in from 1-1/2: sheets 1 (1.5 to 37.5) and 2 reach into the first 4 ft, sheets 9 (289.5 to 325.5)
// and 10 into the last.
TEST_CASE("a sheet whose cover enters a corner zone takes the corner pattern whole") {
  Job job = plain({Length::inches(14)});
  job.patterns[0].rows.push_back(
      {SupportKind::Base, Zone::Corner, {Length::inches(2), Length::inches(14), Length::inches(26)}, "12", {}});
  job.settings.cornerZones = {CornerZones::Rule::Typed, Length::feet(4)};
  const ScrewedWall wall(job);
  const auto count = [&](const std::string& mark) { return wall.of(HoleKind::Base, mark).size(); };
  CHECK(count("A1") == 3);
  CHECK(count("A2") == 3);
  CHECK(count("A3") == 1);
  CHECK(count("A9") == 3);
  CHECK(wall.of(HoleKind::Base, "A2")[0].corner);
  CHECK_FALSE(wall.of(HoleKind::Base, "A3")[0].corner);
  job.settings.cornerZones.width = Length::inches(37, 32);  // ends where sheet 2 begins
  CHECK(ScrewedWall(job).of(HoleKind::Base, "A2").size() == 1);
}

TEST_CASE("rake, jamb, head, sill and end-lap holes are drilled in place unless the pattern says otherwise") {
  Job job = plain({Length::inches(14)});
  CHECK_FALSE(ScrewedWall(job).of(HoleKind::Eave)[0].inPlace);
  for (PatternRow& row : job.patterns[0].rows) row.drilledInPlace = true;
  CHECK(ScrewedWall(job).of(HoleKind::Eave)[0].inPlace);
}

TEST_CASE("a pattern for another profile gives no holes") {
  Job job = plain({Length::inches(14)});
  job.patterns[0].profile = "another";
  const ScrewedWall wall(job);
  CHECK(wall.holes.holes.empty());
  CHECK(wall.holes.patterns[0].otherProfile);
}

TEST_CASE("kinds of support without a row in the pattern are told") {
  Job job = plain({Length::inches(14)});
  std::erase_if(job.patterns[0].rows, [](const PatternRow& row) { return row.support == SupportKind::Eave; });
  const ScrewedWall wall(job);
  REQUIRE(wall.holes.unstated.size() == 1);
  CHECK(wall.holes.unstated[0] == HoleKind::Eave);
}

// UFGS 07413 3.1.1.1: 8 in at supports. Two screws 12 in apart, and the space to the next sheet's 24.
TEST_CASE("spaces wider than the limit are told, unless someone approved them") {
  Job job = plain({Length::inches(14), Length::inches(22)});
  job.walls[0].eavePurlin.row = Length::inches(1);
  job.patterns[0].limits = ScrewPattern::Limits::Ufgs07413;
  const ScrewedWall wall(job);
  CHECK(wall.holes.wideSpaces.size() == 18);  // between ten sheets, at base and eave
  CHECK(wall.holes.wideSpaces[0].to - wall.holes.wideSpaces[0].from == Length::inches(28));
  job.patterns[0].spacingApproval = "letter of 2 March, sheet S-3";
  CHECK(ScrewedWall(job).holes.wideSpaces.empty());
}
