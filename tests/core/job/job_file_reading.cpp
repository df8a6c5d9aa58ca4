// What a job file says and how it may say it.
#include <catch2/catch.hpp>

#include "tests/core/job/job_file_faulty.h"

namespace ribwright {

TEST_CASE("a gable end as a person would write it") {
  const auto job = readJob(R"({
    "ribwright": 1, "units": "feet and inches", "name": "Barn", "decimal_sign": ",",
    "site": {"true_north": -12.25, "wind_from": 270, "sight_points": [{"name": "road", "at": {"x": "30'", "y": "-80'"}, "weight": 3}]},
    "building": {"outline": [{"x": "0", "y": "0"}, {"x": "60 ft", "y": "0"}, {"x": "60'", "y": "40'"}, {"x": "0", "y": "40'"}],
                 "roof": {"kind": "gable", "ends": "A and C", "eave": "12'", "slope": "3.5:12", "far_slope": "9.5 deg"}},
    "walls": [{"letter": "A", "hang": "right to left", "rake_cut": "in place",
               "bands": [{"translucent": [3, 8]}],
               "openings": [{"id": "D1", "kind": "overhead door", "width": "12'", "height": "3 m",
                             "place": {"from": "column", "column": 3, "distance": "-2' 3-1/2\"", "to": "centre"},
                             "clearances": {"head": "3/4\""}}]}]})",
                           "job.json");
  REQUIRE(job);
  const Job& read = job.value();
  CHECK(read.decimalSign == ',');
  CHECK(read.site.trueNorth == Angle{-12'250'000});
  CHECK(read.site.windFrom == Angle::degrees(270));
  CHECK(read.site.sightPoints == std::vector<SightPoint>{{"road", {Length::feet(30), Length::feet(-80)}, 3}});
  CHECK(read.building.outline[2] == PlanPoint{Length::feet(60), Length::feet(40)});
  CHECK(read.building.roof.ends == Roof::Ends::AC);
  CHECK(read.building.roof.slope == Slope::per12(3, 32));
  CHECK(read.building.roof.farSlope == Slope{Slope::As::Angle, {}, Length::inches(12), Angle{9'500'000}});
  const Wall& wall = read.walls.at(0);
  CHECK(wall.hang == Hang::RightToLeft);
  CHECK(wall.rakeCut == RakeCut::InPlace);
  CHECK(wall.bands.at(0).translucent == std::vector<int>{3, 8});
  const Opening& door = wall.openings.at(0);
  CHECK(door.kind == Opening::Kind::OverheadDoor);
  CHECK(door.height == Length::millimetres(3000));
  CHECK(door.place == Anchor{Anchor::From::Column, 3, Length::inches(-27, -32), Anchor::To::Centre});
  CHECK(door.clearances == Clearances{{}, Length::inches(0, 48), {}});
}

TEST_CASE("what is left out has its default") {
  const auto read = readJob(R"({"ribwright": 1, "units": "feet and inches"})", "job.json");
  REQUIRE(read);
  CHECK(read.value() == Job());
  const auto wall = readJob(wallOf(R"("name": "front")"), "job.json");
  REQUIRE(wall);
  Wall usual;
  usual.letter = "A";
  usual.name = "front";
  usual.bands = {Band()};
  CHECK(wall.value().walls == std::vector<Wall>{usual});
}

TEST_CASE("a default may be said too, keys may stand in any order, and a byte order mark is passed over") {
  const std::string text = R"({"walls": [{"start": {"rule": "flush"}, "bands": [{}], "letter": "A", "hang": "by rule"}],
                               "settings": {"kerf": "1/8\""}, "units": "millimetres", "ribwright": 1})";
  const auto read = readJob("\xEF\xBB\xBF" + text, "job.json");
  REQUIRE(read);
  Job expected;
  expected.units = UnitSystem::Millimetres;
  expected.walls.resize(1);
  expected.walls[0].letter = "A";
  expected.walls[0].bands.resize(1);
  CHECK(read.value() == expected);
}

TEST_CASE("bare numbers of a slope are in the job's units, wherever those stand in the file") {
  const auto slopeIn = [](const std::string& units) {
    const auto job =
        readJob(R"({"building": {"roof": {"slope": "150 in 250"}}, "ribwright": 1, "units": ")" + units + "\"}", "");
    REQUIRE(job);
    return *job.value().building.roof.slope;
  };
  CHECK(slopeIn("millimetres") == Slope{Slope::As::RisePerRun, Length::millimetres(150), Length::millimetres(250), {}});
  CHECK(slopeIn("feet and inches") == Slope{Slope::As::RisePerRun, Length::inches(150), Length::inches(250), {}});
}

// The house's and the trade's rules: what an edit can bring about loads, saves and is found.
TEST_CASE("what an edit can bring about is read") {
  const std::vector<std::string> texts = {
      // an opening off the wall, above it, over another
      R"("openings": [{"id": "W1", "width": "90'", "height": "50'", "place": {"distance": "-400'"}}, {"id": "W2", "width": "9'", "height": "9'"}, {"id": "W3", "width": "9'", "height": "9'"}])",
      // a column, a girt and an opening that are gone
      R"("openings": [{"id": "W1", "width": "3'", "height": "3'", "place": {"from": "column", "column": 99}}])",
      R"("end_laps": {"where": "at girts", "girts": ["g9"]}, "start": {"rule": "seam at jamb", "opening": "W9"}, "survey": {"girts": [{"girt": "g9"}]})",
      // a ridge start on a level wall, a joint beyond the wall, a girt that ends before it begins
      R"("start": {"rule": "seam on ridge"}, "expansion_joints": ["900'"], "girts": [{"id": "g1", "height": "-9'", "from": "9'", "to": "3'"}])",
      // a free wall without a hang, a top below the base
      R"("width": "40'", "top": [{"u": "0'", "z": "-9'"}])",
  };
  for (const std::string& text : texts) {
    INFO(text);
    CHECK(linesAbout(wallOf(text)).empty());
  }
  // Bands out of order; no wall for a letter; a sight point inside; facts of a wall that is gone.
  const std::string bands = R"("walls": [{"letter": "Z", "bands": [{"from": "9'"}, {"from": "3'"}]}], )";
  const std::string site = R"("site": {"sight_points": [{"at": {"x": "5'", "y": "5'"}}]}, )";
  const std::string plan =
      R"("building": {"outline": [{"x": "0'", "y": "0'"}, {"x": "9'", "y": "0'"}, {"x": "9'", "y": "9'"}]}, )";
  const std::string facts =
      R"("facts": {"hung": [{"mark": "Q7", "leading_edge": "3'"}], "orders": [{"id": "1", "placed": [{"profile": "gone", "thickness": "0.5 mm", "length": "8'", "quantity": 2}]}]})";
  CHECK(linesAbout(jobOf(bands + site + plan + facts)).empty());
}

TEST_CASE("every wrong thing is told with the name that the file was given") {
  const auto job = readJob("{", "some folder/my job.json");
  REQUIRE_FALSE(job);
  CHECK(job.faults().front().place == "some folder/my job.json: line 1, column 2");
}

}  // namespace ribwright
