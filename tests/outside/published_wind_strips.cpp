// Wind edge strips of walls against published values. ASCE 7 (editions 7-02 to 7-22), components and cladding, walls,
// zone 5: a = min(0.1 B, 0.4 h), not less than max(0.04 B, 3 ft). EN 1991-1-4 7.2.2 and figure 7.5: e = min(b, 2 h).
// Rows marked "arithmetic only" were worked out from the formula and check no more than that.
#include <catch2/catch.hpp>
#include <map>
#include <set>
#include <string>

#include "core/fastening/corner_zone.h"
#include "core/fastening/holes.h"
#include "core/job/job_file.h"
#include "core/layout/lay_out_wall.h"

using namespace ribwright;

namespace {

Length tenthsOfFeet(std::int64_t count) { return scaled(Length::feet(1), count, 10); }
Length metres(std::int64_t count) { return Length::millimetres(1000) * count; }
Length decimetres(std::int64_t count) { return Length::millimetres(100) * count; }

}  // namespace

// A published ASCE 7 calculation page: 20 x 60 ft, 12.5 ft high, flat: the floor of 3 ft governs.
TEST_CASE("edge strip of a 20 x 60 ft building, 12.5 ft high, is 3 ft") {
  CHECK(asceEdgeStrip(Length::feet(20), tenthsOfFeet(125)) == Length::feet(3));
}

// Dimensions from a published ASCE 7 example: 100 x 200 ft, eave 40 ft, roof 1:12; strip arithmetic only: 0.1 B
// governs, 0.4 h is 16 ft. The slope is under 10 degrees, so that h is the eave.
TEST_CASE("edge strip of a 100 x 200 ft building, eave 40 ft, is 10 ft") {
  CHECK(asceEdgeStrip(Length::feet(100), Length::feet(40)) == Length::feet(10));

  Job job;
  job.settings.cornerZones.rule = CornerZones::Rule::Asce7;
  job.building.outline = {{}, {Length::feet(200), {}}, {Length::feet(200), Length::feet(100)}, {{}, Length::feet(100)}};
  job.building.roof.kind = Roof::Kind::Gable;
  job.building.roof.eave = Length::feet(40);
  job.building.roof.slope = Slope::per12(1);
  for (const char* letter : {"A", "B", "C", "D"}) {
    Wall wall;
    wall.letter = letter;
    const auto face = wallFace(job, wall);
    REQUIRE(face.ok());
    CHECK(cornerZone(job, wall, face.value()) == Length::feet(10));
  }
}

// Arithmetic only. 200 x 250 ft, 20 ft high: 0.4 h = 8 ft governs, as wide as the floor of 0.04 B. 60 x 100 ft, 14 ft:
// 5.6 ft.
TEST_CASE("edge strips governed by the height") {
  CHECK(asceEdgeStrip(Length::feet(200), Length::feet(20)) == Length::feet(8));
  CHECK(asceEdgeStrip(Length::feet(60), Length::feet(14)) == tenthsOfFeet(56));
  CHECK(asceEdgeStrip(Length::feet(250), Length::feet(20)) == Length::feet(10));  // 0.04 B
}

// U.S. DOE Commercial Reference Building, Warehouse: 150 x 330 x 28 ft; strip arithmetic only: 0.4 h = 11.2 ft.
TEST_CASE("edge strip of the reference warehouse is 11.2 ft") {
  CHECK(asceEdgeStrip(Length::feet(150), Length::feet(28)) == tenthsOfFeet(112));
}

// 11.2 ft / 3 ft = 3.7: four covers of 36 in reach into it from each corner, on every wall, whichever way it hangs.
TEST_CASE("on the reference warehouse four sheets of 36 in at each side of each corner take the corner rows") {
  const auto job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/doe-warehouse.json");
  REQUIRE(job.ok());
  REQUIRE(job.value().walls.size() == 4);
  for (const Wall& wall : job.value().walls) {
    INFO("wall " << wall.letter);
    const auto layout = layOutWall(job.value(), wall);
    REQUIRE(layout.ok());
    const WallFace& face = layout.value().face;
    const auto zone = cornerZone(job.value(), wall, face);
    REQUIRE(zone == tenthsOfFeet(112));
    int left = 0, right = 0;
    std::set<std::string> cornerSheets;
    for (const Module& module : layout.value().runs.at(0).modules) {
      const auto [low, high] = std::minmax(module.startLine, module.leadLine);
      const bool atLeft = low < *zone && high > Length();
      const bool atRight = high > face.width - *zone && low < face.width;
      left += atLeft ? 1 : 0;
      right += atRight ? 1 : 0;
      if (atLeft || atRight) cornerSheets.insert(wall.letter + std::to_string(module.number));
    }
    CHECK(left == 4);
    CHECK(right == 4);

    // On the topmost girt no opening is in the way: six screws a sheet there, three in the field.
    const WallHoles holes = holesOf(job.value(), wall, layout.value());
    std::map<std::string, int> onTopGirt;
    for (const Hole& hole : holes.holes) {
      const std::string& mark = layout.value().pieces.at(static_cast<std::size_t>(hole.pieces[0])).mark;
      const std::string sheet = mark.substr(0, mark.find('.'));
      const bool onGirt = hole.kind == HoleKind::Girt;
      if (onGirt && holes.supports.rows.at(static_cast<std::size_t>(hole.row)).id == "g4") ++onTopGirt[sheet];
      CHECK(hole.corner == cornerSheets.contains(sheet));
    }
    CHECK(onTopGirt.size() == layout.value().runs.at(0).modules.size());
    for (const auto& [sheet, screws] : onTopGirt) {
      INFO(sheet);
      CHECK(screws == (cornerSheets.contains(sheet) ? 6 : 3));
    }
  }
}

// European Commission / SCI, "Steel Buildings in Europe", part 3, appendix B: wind on the gable, b = 32 m, d = 60 m,
// h = 8 m: e = 16 m, strips of 3.2, 12.8 and 44 m.
TEST_CASE("strips of a hall 32 x 60 m, 8 m high, with the wind on its gable") {
  CHECK(enStrips(metres(32), metres(60), metres(8)) == EnStrips{decimetres(32), decimetres(128), metres(44)});

  Job job;
  job.settings.cornerZones.rule = CornerZones::Rule::En1991;
  job.building.outline = {{}, {metres(60), {}}, {metres(60), metres(32)}, {{}, metres(32)}};
  job.building.roof.kind = Roof::Kind::Level;
  job.building.roof.eave = metres(8);
  for (const char* letter : {"A", "C"}) {
    Wall wall;
    wall.letter = letter;
    const auto face = wallFace(job, wall);
    REQUIRE(face.ok());
    CHECK(cornerZone(job, wall, face.value()) == decimetres(32));
  }
}

// Arithmetic only. A wall no longer than a fifth of e is edge strip from end to end; one between e/5 and e has no
// middle strip, and exactly at e = d and e = 5 d the longer and the shorter form agree.
TEST_CASE("strips of walls shorter than e") {
  CHECK(enStrips(metres(60), metres(3), metres(8)) == EnStrips{metres(3), {}, {}});
  CHECK(enStrips(metres(60), metres(10), metres(8)) == EnStrips{decimetres(32), decimetres(68), {}});
  CHECK(enStrips(metres(60), metres(16), metres(8)) == EnStrips{decimetres(32), decimetres(128), {}});
  CHECK(enStrips(metres(60), decimetres(32), metres(8)) == EnStrips{decimetres(32), {}, {}});
}
