// Which part of a wall takes the corner pattern. Published widths stand in tests/outside/published_wind_strips.cpp.
#include "core/fastening/corner_zone.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

Job building(Length alongX, Length alongY, CornerZones::Rule rule) {
  Job job;
  job.settings.cornerZones.rule = rule;
  job.building.outline = {{}, {alongX, {}}, {alongX, alongY}, {{}, alongY}};
  for (const char* letter : {"A", "B", "C", "D"}) {
    Wall wall;
    wall.letter = letter;
    job.walls.push_back(wall);
  }
  return job;
}

Roof gable(Length eave, Slope slope) {
  Roof roof;
  roof.kind = Roof::Kind::Gable;
  roof.eave = eave;
  roof.slope = slope;
  return roof;
}

Roof level(Length eave) {
  Roof roof;
  roof.kind = Roof::Kind::Level;
  roof.eave = eave;
  return roof;
}

std::optional<Length> zoneOf(const Job& job, std::size_t wall) {
  const auto face = wallFace(job, job.walls.at(wall));
  if (!face) FAIL(face.faults().front().message);
  return cornerZone(job, job.walls[wall], face.value());
}

Length hundredthsOfFeet(std::int64_t count) { return scaled(Length::feet(1), count, 100); }

}  // namespace

TEST_CASE("no rule makes no zone, and a typed width is the zone as it is typed") {
  Job job = building(Length::feet(60), Length::feet(40), CornerZones::Rule::None);
  job.building.roof = level(Length::feet(14));
  CHECK(zoneOf(job, 0) == Length());
  job.settings.cornerZones = {CornerZones::Rule::Typed, Length::feet(5, 3)};
  CHECK(zoneOf(job, 0) == Length::feet(5, 3));
  job.building.outline.clear();
  job.walls[0].width = Length::feet(20);
  job.walls[0].top = {{Length(), Length::feet(9)}};
  CHECK(zoneOf(job, 0) == Length::feet(5, 3));
}

// ASCE 7, components and cladding, walls: the mean roof height from 10 degrees on, the eave height below.
TEST_CASE("ASCE 7: a roof of 2:12 counts by its eave, one of 4:12 by its mean height") {
  Job job = building(Length::feet(200), Length::feet(60), CornerZones::Rule::Asce7);
  job.building.roof = gable(Length::feet(12), Slope::per12(2));  // 9.46 degrees
  for (std::size_t wall = 0; wall < 4; ++wall) CHECK(zoneOf(job, wall) == hundredthsOfFeet(480));
  job.building.roof = gable(Length::feet(12), Slope::per12(4));  // ridge 22 ft, mean 17 ft; 0.1 x 60 ft governs
  for (std::size_t wall = 0; wall < 4; ++wall) CHECK(zoneOf(job, wall) == Length::feet(6));
  job.building.roof = gable(Length::feet(8), Slope::per12(4));  // ridge 18 ft, mean 13 ft
  for (std::size_t wall = 0; wall < 4; ++wall) CHECK(zoneOf(job, wall) == hundredthsOfFeet(520));
}

TEST_CASE("ASCE 7: a roof typed as 10 degrees has 10 degrees, whichever way its heights were rounded") {
  const auto zone = [](Length span, std::int64_t microdegrees) {
    Job job = building(Length::feet(400), span, CornerZones::Rule::Asce7);
    job.building.roof = gable(Length::feet(8), Slope{Slope::As::Angle, {}, Length::inches(12), {microdegrees}});
    return zoneOf(job, 0);
  };
  for (const std::int64_t millimetres : {12'000, 15'000, 18'288, 20'001}) {
    const Length span = Length::millimetres(millimetres);
    CHECK(zone(span, 9'999'999) == hundredthsOfFeet(320));  // 0.4 x 8 ft
    const Length rise = riseOver(Slope{Slope::As::Angle, {}, Length::inches(12), Angle::degrees(10)}, half(span));
    CHECK(zone(span, 10'000'000) == std::min(scaled(span, 1, 10), scaled(Length::feet(8) + scaled(rise, 1, 2), 2, 5)));
  }
}

TEST_CASE("ASCE 7: with unequal eaves the lower one is the eave") {
  Job job = building(Length::feet(200), Length::feet(100), CornerZones::Rule::Asce7);
  job.building.roof = level(Length::feet(20));
  job.building.roof.kind = Roof::Kind::SingleSlope;
  job.building.roof.farEave = Length::feet(12);  // 8 ft over 100 ft: under 10 degrees
  CHECK(zoneOf(job, 0) == hundredthsOfFeet(480));
  CHECK(zoneOf(job, 1) == hundredthsOfFeet(480));
}

TEST_CASE("a parapet that one wall states makes no higher roof where the building states one") {
  Job job = building(Length::feet(200), Length::feet(150), CornerZones::Rule::Asce7);
  job.building.roof = level(Length::feet(20));
  job.walls[0].top = {{Length(), Length::feet(24)}, {Length::feet(200), Length::feet(24)}};
  CHECK(zoneOf(job, 0) == Length::feet(8));
  CHECK(zoneOf(job, 1) == Length::feet(8));
}

TEST_CASE("without a roof each wall goes by its own steel line, and by no other wall's") {
  Job job = building(Length::feet(200), Length::feet(150), CornerZones::Rule::Asce7);
  for (Wall& wall : job.walls) wall.top = {{Length(), Length::feet(20)}, {Length::feet(150), Length::feet(20)}};
  job.walls[1].top = {{Length(), Length::feet(30)}, {Length::feet(150), Length::feet(30)}};
  CHECK(zoneOf(job, 0) == Length::feet(8));
  CHECK(zoneOf(job, 1) == Length::feet(12));
  // Steeper than 10 degrees, but only past the corner; and an upright step is no slope.
  job.walls[1].top = {{Length(), Length::feet(30)},
                      {Length::feet(75), Length::feet(30)},
                      {Length::feet(75), Length::feet(34)},
                      {Length::feet(150), Length::feet(34)},
                      {Length::feet(160), Length::feet(60)}};
  CHECK(zoneOf(job, 1) == Length::feet(12));
}

TEST_CASE("EN 1991-1-4: the wind blows along the wall, the crosswind side lies across it") {
  Job job = building(Length::millimetres(60'000), Length::millimetres(32'000), CornerZones::Rule::En1991);
  job.building.roof = level(Length::millimetres(20'000));
  CHECK(zoneOf(job, 0) == Length::millimetres(6'400));  // b = 32 m across wall A: e = 32 m
  CHECK(zoneOf(job, 1) == Length::millimetres(8'000));  // b = 60 m across wall B: e = 2 h = 40 m
  CHECK(zoneOf(job, 2) == Length::millimetres(6'400));
  job.building.roof = gable(Length::millimetres(5'000), Slope::per12(3));  // ridge at 5 m + 16 m x 3/12 = 9 m
  CHECK(zoneOf(job, 0) == Length::millimetres(3'600));
  CHECK(zoneOf(job, 3) == Length::millimetres(3'600));
}

TEST_CASE("EN 1991-1-4: a wall askew takes the lesser side of the outline's box") {
  Job job = building(Length::millimetres(60'000), Length::millimetres(32'000), CornerZones::Rule::En1991);
  job.building.roof = level(Length::millimetres(40'000));
  job.walls[0].line = PlanLine{{}, {Length::millimetres(3'000), Length::millimetres(4'000)}};
  job.walls[0].top = {{Length(), Length::millimetres(40'000)}};
  CHECK(zoneOf(job, 0) == Length::millimetres(5'000));  // d = 5 m, e = 32 m: all of it
  job.walls[0].line->to = {Length::millimetres(30'000), Length::millimetres(40'000)};
  CHECK(zoneOf(job, 0) == Length::millimetres(6'400));  // d = 50 m
}

// e/5, 4 e/5 and d - e of whole nanometres that five does not divide: each rounded, together still d.
TEST_CASE("the strips of EN 1991-1-4 fill the wall, whatever was rounded") {
  for (std::int64_t b = 1; b <= 40; ++b) {
    for (std::int64_t d = 1; d <= 60; ++d) {
      const EnStrips strips = enStrips(Length::nanometres(b), Length::nanometres(d), Length::nanometres(12));
      CHECK(strips.a + strips.b + strips.c == Length::nanometres(d));
      CHECK(std::min({strips.a, strips.b, strips.c}) >= Length());
      const std::int64_t e = std::min(b, std::int64_t{24});
      if (e < 5 * d) CHECK(std::abs(5 * strips.a.nanometres() - e) <= 2);
    }
  }
}

TEST_CASE("a zone is not known without an outline, nor by EN 1991-1-4 without steel above the concrete") {
  for (const auto rule : {CornerZones::Rule::Asce7, CornerZones::Rule::En1991}) {
    Job job = building(Length::feet(60), Length::feet(40), rule);
    job.building.outline.clear();
    job.walls[0].width = Length::feet(20);
    job.walls[0].top = {{Length(), Length::feet(9)}};
    CHECK_FALSE(zoneOf(job, 0));
    CHECK_FALSE(cornerZone(building(Length::feet(60), Length::feet(40), rule), {}, {}));  // no steel line at all
  }
  Job job = building(Length::feet(60), Length::feet(40), CornerZones::Rule::En1991);
  job.building.roof = level(Length());
  CHECK_FALSE(zoneOf(job, 0));
}
