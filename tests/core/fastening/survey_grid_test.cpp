// What a survey asks for: a wall 40 ft wide, columns 1 in from its corners and at 20 ft, girt g1 from corner to corner,
// g2 from 4 ft to 16 ft.
#include "core/fastening/survey_grid.h"

#include <catch2/catch.hpp>

#include "example_screws.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

using Of = SurveyLine::Of;
using At = SurveyStation::At;

Job wallOf40() {
  Job job = screwed(gable40(), everywhere({Length::inches(2)}));
  Wall& wall = job.walls[0];
  wall.width = ft(40);
  wall.top = {{Length(), ft(12)}, {ft(40), ft(12)}};
  wall.girts = {girt("g1", ft(4), Girt::TypedBy::WebLine), girt("g2", ft(8), Girt::TypedBy::WebLine)};
  wall.girts[1].from = ft(4);
  wall.girts[1].to = ft(16);
  wall.columns.offset = Length::inches(1);
  wall.columns.bays = {ft(19, 11), ft(19, 11)};
  return job;
}

std::vector<SurveyLine> linesOf(const Job& job) {
  const ScrewedWall wall(job);
  return surveyLines(job.walls[0], wall.layout, wall.holes.supports);
}

std::vector<SurveyStation> stationsOf(const Job& job) {
  const ScrewedWall wall(job);
  return surveyStations(job.walls[0], wall.layout, linesOf(job));
}

std::vector<Length> placesOf(const Job& job) {
  std::vector<Length> all;
  for (const SurveyStation& station : stationsOf(job)) all.push_back(station.u);
  return all;
}

}  // namespace

TEST_CASE("a survey asks for the eave purlin, the girts from the top, and the slab edge") {
  const auto lines = linesOf(wallOf40());
  REQUIRE(lines.size() == 4);
  CHECK(lines[0] == SurveyLine{Of::Eave, "eave", -1, Length(), ft(40)});
  CHECK(lines[1] == SurveyLine{Of::Girt, "g2", 1, ft(4), ft(16)});
  CHECK(lines[2] == SurveyLine{Of::Girt, "g1", 0, Length(), ft(40)});
  CHECK(lines[3] == SurveyLine{Of::Slab, "", -1, Length(), ft(40)});
}

TEST_CASE("sheets that stand on a wall cover no slab edge") {
  Job job = wallOf40();
  job.walls[0].base.form = Base::Form::OnWall;
  CHECK(linesOf(job).back().of == Of::Girt);
}

// Nothing is known beyond the outermost stations, and girts sag most in the middle of a bay.
TEST_CASE("one measures at the ends of girts, at columns and in the middle between these") {
  const auto stations = stationsOf(wallOf40());
  CHECK(placesOf(wallOf40()) == std::vector<Length>{ft(0), ft(0, 1), ft(4), ft(10) + Length::inches(0, 32), ft(16),
                                                    ft(20), ft(29) + Length::inches(11, 32), ft(39, 11), ft(40)});
  CHECK(stations[0].at == At::GirtEnd);
  CHECK(stations[1] == SurveyStation{ft(0, 1), At::Column, 1});
  CHECK(stations[3] == SurveyStation{ft(10) + Length::inches(0, 32), At::Midspan, 1});
  CHECK(stations[5] == SurveyStation{ft(20), At::Column, 2});
}

TEST_CASE("without columns one measures in the middle between the ends") {
  Job job = wallOf40();
  job.walls[0].columns = {};
  job.walls[0].girts.pop_back();
  CHECK(placesOf(job) == std::vector<Length>{ft(0), ft(20), ft(40)});
}

TEST_CASE("a place that was measured is a station too") {
  Job job = wallOf40();
  job.walls[0].survey.girts = {{"g1", {{ft(7), ft(4), {}, "", ""}, {ft(20), ft(4), {}, "", ""}}}};
  job.walls[0].survey.slab = {{ft(33), Length()}};
  const auto stations = stationsOf(job);
  const auto at = [&](Length u) {
    return std::find_if(stations.begin(), stations.end(), [&](const auto& one) { return one.u == u; });
  };
  REQUIRE(at(ft(7)) != stations.end());
  CHECK(at(ft(7))->at == At::Measured);
  CHECK(at(ft(20))->at == At::Column);
  CHECK(at(ft(33)) != stations.end());
}

// Chalk line at the sheets' bottom, 1-3/4 in below concrete: a girt typed at 4 ft is expected at 4 ft 1-3/4 in above
// it.
TEST_CASE("a reading deviates by what it lies above the plans, from the chalk line; the slab edge from concrete") {
  const Job job = wallOf40();
  const ScrewedWall wall(job);
  const auto lines = linesOf(job);
  const auto off = [&](std::size_t line, Length height) {
    return deviationOf(job.walls[0], wall.layout, lines[line], {ft(8), height, {}, "", ""});
  };
  CHECK(off(2, ft(4) + Length::inches(1, 48)) == Length());
  CHECK(off(2, ft(4) + Length::inches(2)) == Length::inches(0, 16));
  CHECK(off(3, -Length::inches(0, 8)) == -Length::inches(0, 8));
  CHECK(off(0, ft(12) + Length::inches(1, 48)) == Length());
}

TEST_CASE("with a chalk line that was snapped elsewhere, readings are taken from there") {
  Job job = wallOf40();
  job.walls[0].survey.chalkLine = -Length::inches(3);
  const ScrewedWall wall(job);
  const SurveyLine line = linesOf(job)[2];
  CHECK(deviationOf(job.walls[0], wall.layout, line, {ft(8), ft(4, 3), {}, "", ""}) == Length());
}
