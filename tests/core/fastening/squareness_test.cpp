// Width and lean of a wall from its diagonals.
#include "core/fastening/squareness.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/fastening/survey_results.h"
#include "measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

// The diagonal of a right triangle, in double.
Length diagonal(double level, double upright) { return Length::nanometres(std::llround(std::hypot(level, upright))); }

Job measuredWall(std::optional<Length> rising, std::optional<Length> falling) {
  Job job = freeWall(Length::feet(16));  // 12 ft high: 20 ft from corner to corner
  job.walls[0].survey.diagonalRising = rising;
  job.walls[0].survey.diagonalFalling = falling;
  return job;
}

std::optional<Squareness> squareOf(const Job& job) {
  return squareness(job.walls[0], layOutWall(job, job.walls[0]).value().face);
}

}  // namespace

TEST_CASE("equal diagonals of the planned length: the wall is square and as wide as planned") {
  CHECK(squareOf(measuredWall(Length::feet(20), Length::feet(20))) ==
        Squareness{Length::feet(16), Length(), Length::feet(12)});
}

// 5-12-13 and 9-12-15: the legs are 9 and 5 ft, so the wall is 7 ft wide and leans 2 ft to the right.
TEST_CASE("a longer rising diagonal leans the wall to the right") {
  CHECK(squareness(Length::feet(15), Length::feet(13), Length::feet(12)) ==
        Squareness{Length::feet(7), Length::feet(2), Length::feet(12)});
  CHECK(squareness(Length::feet(13), Length::feet(15), Length::feet(12)) ==
        Squareness{Length::feet(7), -Length::feet(2), Length::feet(12)});
}

TEST_CASE("one diagonal says nothing") {
  CHECK_FALSE(squareOf(measuredWall(Length::feet(20), {})));
  CHECK_FALSE(squareOf(measuredWall({}, Length::feet(20))));
}

TEST_CASE("diagonals no longer than the wall is high say nothing") {
  CHECK_FALSE(squareOf(measuredWall(Length::feet(12), Length::feet(20))));
  CHECK_FALSE(squareOf(measuredWall(Length::feet(20), Length::feet(12))));
}

TEST_CASE("a gable's corners are those of its eaves; unequal corners say nothing") {
  Job job = measuredWall(Length::feet(20), Length::feet(20));
  job.walls[0].top = {
      {Length(), Length::feet(12)}, {Length::feet(8), Length::feet(15)}, {Length::feet(16), Length::feet(12)}};
  CHECK(squareOf(job)->width == Length::feet(16));
  job.walls[0].top.back().z = Length::feet(11);
  CHECK_FALSE(squareOf(job));
  job = measuredWall(Length::feet(20), Length::feet(20));
  job.walls[0].base.steps = {{Length::feet(8), Length::feet(1)}};
  CHECK_FALSE(squareOf(job));
}

// Parallelograms up to 200 ft wide and 30 ft high that lean up to 3 in; diagonals as a tape reads them, to 1/64 in
// here.
TEST_CASE("a parallelogram's width and lean are found again from its diagonals") {
  std::mt19937 dice(20260712);
  const auto between = [&](double low, double high) { return low + (high - low) * double(dice() % 1'000'001) / 1e6; };
  for (int round = 0; round < 2000; ++round) {
    const double width = between(8, 200) * 304.8e6, height = between(8, 30) * 304.8e6, lean = between(-3, 3) * 25.4e6;
    const auto found = squareness(diagonal(width + lean, height), diagonal(width - lean, height),
                                  Length::nanometres(std::llround(height)));
    REQUIRE(found);
    CHECK(absolute(found->width - Length::nanometres(std::llround(width))) < Length::sixtyFourths(1));
    CHECK(absolute(found->lean - Length::nanometres(std::llround(lean))) < Length::sixtyFourths(1));
  }
}

TEST_CASE("1/4 in in 10 ft is square enough") { CHECK(mostLean(Length::feet(10)) == in(0, 4)); }

TEST_CASE("all that follows from a wall's survey comes together") {
  Job job = levelWall({girt("g1", Length::feet(7))});
  Wall& wall = job.walls[0];
  wall.columns.bays = {Length::feet(12)};
  wall.survey.slab = {{in(0), in(0)}, {in(144), -in(3)}};
  wall.survey.diagonalRising = wall.survey.diagonalFalling = Length::feet(17);
  wall.survey.propsInPlace = true;
  const ScrewedWall made(job);
  const SurveyResults results = surveyResults(job, wall, made.layout, made.holes.supports);
  CHECK(results.sags == girtSags(job, wall, made.layout, made.holes.supports));
  CHECK(results.sags.size() == 1);
  CHECK(results.chalk == chalkSnaps(job, wall, made.layout));
  CHECK(results.shortSheets == shortOfLine(job, wall, made.layout, results.chalk.value()));
  CHECK(results.shortSheets.size() == 4);
  CHECK(results.square == squareness(wall, made.layout.face));
  CHECK(results.square->lean == Length());
}
