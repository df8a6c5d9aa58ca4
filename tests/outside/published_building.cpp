// U.S. DOE Commercial Reference Building, Warehouse (new construction, 90.1-2004): its metal building walls, from the
// vertices and the nominal feet of the public input file. Data: U.S. Department of Energy, NREL, PNNL, LBNL.
#include <catch2/catch.hpp>

#include "core/plan/plan.h"

using namespace ribwright;

namespace {

struct Stated {
  Length start, sill, width, height;
};

// Places in hundredths of a foot, as the file's table gives them: from the south corner of the east and west walls,
// from the west corner of the south wall.
Length hundredths(std::int64_t feet100) { return scaled(Length::feet(1), feet100, 100); }

std::vector<Stated> westOpenings() {
  std::vector<Stated> all;
  for (const int start : {12174, 15149, 18124, 21099, 24074, 27049, 30024}) {
    all.push_back({hundredths(start), {}, Length::feet(8), Length::feet(10)});
  }
  for (const int start : {1350, 6350}) all.push_back({hundredths(start), {}, Length::feet(3), Length::feet(7)});
  for (const int start : {533, 1767})
    all.push_back({hundredths(start), Length::feet(3), Length::feet(7), Length::feet(5)});
  return all;
}

std::vector<Stated> eastOpenings() {
  std::vector<Stated> all;
  for (const int start : {4850, 15599, 21349, 27099})
    all.push_back({hundredths(start), {}, Length::feet(3), Length::feet(7)});
  return all;
}

std::vector<Stated> southOpenings() {
  return {{hundredths(3950), {}, Length::feet(6), Length::feet(7)},
          {hundredths(1200), Length::feet(3), Length::feet(12), Length::feet(5)},
          {hundredths(6100), Length::feet(3), Length::feet(12), Length::feet(5)}};
}

Profile cover36() {
  Profile profile;
  profile.id = "rib-36";
  profile.cover = Length::inches(36);
  profile.over = Length::inches(1, 32);
  profile.under = Length::inches(0, 48);
  profile.thickness = Length::nanometres(475'000);
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
  return profile;
}

// Wall A is the south wall, B east, C north, D west. Sheets end at the concrete and at the roof, as the file's walls
// do.
Job warehouse(Length width, Length length, Length height) {
  Job job;
  job.profiles = {cover36()};
  job.building.outline = {{Length(), Length()}, {width, Length()}, {width, length}, {Length(), length}};
  job.building.roof.kind = Roof::Kind::Level;
  job.building.roof.eave = height;
  for (const char* letter : {"A", "B", "C", "D"}) {
    Wall wall;
    wall.letter = letter;
    wall.base.drop = Length();
    wall.eaveHoldDown = Length();
    wall.start.rule = Start::Rule::ModuleLine;
    wall.reachLeft = wall.reachRight = Length::inches(1, 32);
    Band band;
    band.profile = "rib-36";
    wall.bands = {band};
    job.walls.push_back(wall);
  }
  return job;
}

void openUp(Wall& wall, const std::vector<Stated>& stated, std::optional<Length> seenFromTheOtherEnd) {
  for (std::size_t i = 0; i < stated.size(); ++i) {
    Opening opening;
    opening.id = wall.letter + "o" + std::to_string(i + 1);
    opening.width = stated[i].width;
    opening.height = stated[i].height;
    opening.sill = stated[i].sill;
    opening.place.distance =
        seenFromTheOtherEnd ? *seenFromTheOtherEnd - stated[i].start - stated[i].width : stated[i].start;
    opening.clearances = {Length(), Length(), Length()};
    wall.openings.push_back(opening);
  }
}

Job withOpenings() {
  Job job = warehouse(Length::feet(150), Length::feet(330), Length::feet(28));
  openUp(job.walls[0], southOpenings(), std::nullopt);
  openUp(job.walls[1], eastOpenings(), std::nullopt);
  // Looking at the west wall from outside, left is north.
  openUp(job.walls[3], westOpenings(), Length::feet(330));
  return job;
}

std::vector<std::size_t> sheets(const Plan& plan) {
  std::vector<std::size_t> counts;
  for (const auto& wall : plan.walls) counts.push_back(wall->layout.runs.at(0).modules.size());
  return counts;
}

}  // namespace

// 36 in cover: 110 + 110 + 50 + 50 = 320 sheets of 28 ft, before any deduction; 330 / 3 is 110 and not 111.
TEST_CASE("the reference warehouse takes 320 sheets of 28 ft") {
  const Plan made = plan(warehouse(Length::feet(150), Length::feet(330), Length::feet(28)));
  CHECK(sheets(made) == std::vector<std::size_t>{50, 110, 50, 110});
  REQUIRE(made.order.lines.size() == 1);
  CHECK(made.order.lines[0].quantity() == 320);
  CHECK(made.order.lines[0].length == Length::feet(28));
}

// The vertices: 45.7178 m x 100.5790 m x 8.534 m, which is 49.9976 and 109.9945 covers.
TEST_CASE("the same from the vertices in metres") {
  const auto tenths = [](std::int64_t tenthMillimetres) { return Length::nanometres(tenthMillimetres * 100'000); };
  const Plan made = plan(warehouse(tenths(457178), tenths(1005790), Length::millimetres(8534)));
  CHECK(sheets(made) == std::vector<std::size_t>{50, 110, 50, 110});
}

// Published: gross 26,880 ft2 and openings 918 ft2, net 25,962 ft2; east and west 9,240, north and south 4,200 ft2.
TEST_CASE("gross, openings and net of the reference warehouse in square feet") {
  const Plan made = plan(withOpenings());
  Area gross, cut, net;
  for (const auto& wall : made.walls) {
    const WallFace& face = wall->layout.face;
    const Area whole = face.width * Length::feet(28);
    CHECK(whole == (wall->layout.letter == "A" || wall->layout.letter == "C" ? Length::feet(150) : Length::feet(330)) *
                       Length::feet(28));
    gross += whole;
    for (const SheetRun& run : wall->layout.runs) {
      cut += run.cut;
      net += run.net - (run.face - whole);  // less the strips that reach around the corners
    }
  }
  CHECK(gross == Length::feet(26'880) * Length::feet(1));
  CHECK(cut == Length::feet(918) * Length::feet(1));
  CHECK(net == Length::feet(25'962) * Length::feet(1));
}
