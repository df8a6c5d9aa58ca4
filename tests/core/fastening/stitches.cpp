// Stitch screws along the side laps.
#include <catch2/catch.hpp>

#include "core/fastening/spacing_limits.h"
#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job stitched(Length height, Length limit) {
  Job job = screwed(freeWall(Length::feet(9), {{Length(), height}, {Length::feet(9), height}}),
                    everywhere({Length::inches(2), Length::inches(14), Length::inches(26)}));
  job.walls[0].base.drop = Length();
  job.patterns[0].stitchSpacing = limit;
  job.patterns[0].stitchScrew = "14";
  return job;
}

}  // namespace

// UFGS 07413 3.1.1.1: 18 in at side laps. A lap of 28 ft: 19 spaces of 17.68 in.
TEST_CASE("a 28-ft lap at most 18 in apart has 19 spaces, 18 screws") {
  const ScrewedWall wall(stitched(Length::feet(28), Length::inches(18)));
  const std::vector<Hole> holes = wall.of(HoleKind::Stitch, "A2");
  REQUIRE(holes.size() == 18);
  CHECK(holes[0].z == scaled(Length::feet(28), 1, 19));
  CHECK(holes[17].z == scaled(Length::feet(28), 18, 19));
  CHECK(wall.of(HoleKind::Stitch, "A1").empty());  // the lap belongs to the sheet that lies over it
}

TEST_CASE("a lap no longer than the spacing needs no stitch screw") {
  CHECK(ScrewedWall(stitched(Length::inches(18), Length::inches(18))).of(HoleKind::Stitch).empty());
  CHECK(ScrewedWall(stitched(Length::inches(18) + Length::nanometres(1), Length::inches(18)))
            .of(HoleKind::Stitch, "A2")
            .size() == 1);
}

TEST_CASE("structural screws through the lap divide it; each part is spaced by itself") {
  Job job = stitched(Length::feet(10), Length::inches(30));
  // A flat sheet with one crown over the module line and leg enough for a screw beside it.
  Profile& profile = job.profiles[0];
  profile.under = Length::inches(4);
  const Length in1 = Length::inches(1), half = Length::inches(0, 32);
  profile.section = {{-profile.over, Length()},
                     {-in1, Length()},
                     {-half, in1},
                     {half, in1},
                     {in1, Length()},
                     {profile.cover - in1, Length()},
                     {profile.cover - half, in1},
                     {profile.cover + half, in1},
                     {profile.cover + in1, Length()},
                     {profile.cover + profile.under, Length()}};
  job.walls[0].girts = {girt("g1", Length::inches(50))};
  for (PatternRow& row : job.patterns[0].rows) row.offsets = {Length::inches(3)};
  const ScrewedWall wall(job);
  // Through the lap at base 1, girt 50 and eave 119 in, the lap's ends at 0 and 120: 49 in: two spaces of 24-1/2; 69
  // in: three of 23.
  const std::vector<Hole> holes = wall.of(HoleKind::Stitch, "A2");
  REQUIRE(holes.size() == 3);
  CHECK(holes[0].z == Length::inches(25, 32));
  CHECK(holes[1].z == Length::inches(73));
  CHECK(holes[2].z == Length::inches(96));
}

TEST_CASE("an opening divides a lap") {
  Job job = stitched(Length::feet(12), Length::inches(12));
  Opening window;
  window.id = "W1";
  window.place.distance = Length::inches(30);  // the lap of sheets 1 and 2 stands at 37-1/2
  window.width = Length::inches(24);
  window.height = Length::feet(3);
  window.sill = Length::feet(4);
  job.walls[0].openings = {window};
  const ScrewedWall wall(job);
  for (const Hole& hole : wall.of(HoleKind::Stitch)) {
    if (hole.u != Length::inches(37, 32)) continue;
    CHECK((hole.z < Length::feet(4) || hole.z > Length::feet(7)));
  }
  // 48 in below: 4 spaces, 3 screws; above the cut at 84-1/2 in 59-1/2: 5 spaces, 4 screws.
  CHECK(wall.of(HoleKind::Stitch, "A2.1").size() + wall.of(HoleKind::Stitch, "A2").size() +
            wall.of(HoleKind::Stitch, "A2.2").size() ==
        7);
}

TEST_CASE("without a crown over the lap there is nothing to stitch to") {
  Job job = stitched(Length::feet(10), Length::inches(18));
  job.profiles[0].section = {{-job.profiles[0].over, Length()},
                             {job.profiles[0].cover + job.profiles[0].under, Length()}};
  const ScrewedWall wall(job);
  CHECK(wall.of(HoleKind::Stitch).empty());
  CHECK(wall.refused(Refusal::Why::NoCrown).size() == 1);
}
