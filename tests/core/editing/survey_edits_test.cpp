// A survey as it comes from the slab: someone reads a tape, another types. Heights are above the chalk line.
#include "core/editing/survey_edits.h"

#include <catch2/catch.hpp>

#include "core/job/job_file.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

Job twoBareWalls() {
  Job job;
  job.name = "shed";
  job.walls.resize(2);
  job.walls[0].letter = "A";
  job.walls[1].letter = "B";
  for (Wall& wall : job.walls) wall.bands.resize(1);
  return job;
}

GirtReading at(Length u, Length height) { return {u, height, {}, "M. Reed", "2026-03-09"}; }

std::vector<Length> stations(const Job& job, std::size_t wall, std::size_t girt) {
  std::vector<Length> all;
  for (const GirtReading& reading : job.walls[wall].survey.girts.at(girt).readings) all.push_back(reading.u);
  return all;
}

}  // namespace

// At stations along the wall, linear between them.
TEST_CASE("readings stand from left to right, in whatever order they were taken") {
  Job job = twoBareWalls();
  for (const int u : {20, 0, 40, 10}) job = setReading(job, 0, "g1", at(ft(u), Length::feet(7, 4)));
  CHECK(stations(job, 0, 0) == std::vector<Length>{ft(0), ft(10), ft(20), ft(40)});
  CHECK(job.walls[1].survey == WallSurvey{});
  CHECK(faultsOf(job).empty());
}

TEST_CASE("a girt measured twice at one station is as it was measured last, by whom and when") {
  Job job = setReading(twoBareWalls(), 0, "g1", at(ft(10), Length::feet(7, 4)));
  const GirtReading again{ft(10), Length::feet(7, 3), Length::inches(0, 8), "J. Ortiz", "2026-03-10"};
  job = setReading(job, 0, "g1", again);
  REQUIRE(job.walls[0].survey.girts.size() == 1);
  CHECK(job.walls[0].survey.girts[0].readings == std::vector<GirtReading>{again});
}

TEST_CASE("each girt has its own readings, and so has the eave purlin") {
  Job job = setReading(twoBareWalls(), 0, "g1", at(ft(0), ft(4)));
  job = setReading(job, 0, "eave", at(ft(0), ft(12)));
  job = setReading(job, 1, "g1", at(ft(0), ft(5)));
  REQUIRE(job.walls[0].survey.girts.size() == 2);
  CHECK(job.walls[0].survey.girts[0].girt == "g1");
  CHECK(job.walls[0].survey.girts[1].girt == "eave");
  CHECK(job.walls[1].survey.girts[0].readings[0].height == ft(5));
}

TEST_CASE("clearing the last reading of a girt leaves the survey as if it had never been measured") {
  const Job one = setReading(twoBareWalls(), 0, "g1", at(ft(0), ft(4)));
  const Job two = setReading(one, 0, "g1", at(ft(20), ft(4)));
  CHECK(clearReading(two, 0, "g1", ft(20)) == one);
  CHECK(clearReading(one, 0, "g1", ft(0)) == twoBareWalls());
  CHECK(clearReading(one, 0, "g1", ft(1)) == one);
  CHECK(clearReading(one, 0, "g2", ft(0)) == one);
}

TEST_CASE("the slab edge is measured at stations of its own, down is negative") {
  Job job = setSlab(twoBareWalls(), 0, {ft(40), -Length::inches(0, 8)});
  job = setSlab(job, 0, {ft(0), Length()});
  CHECK(job.walls[0].survey.slab == std::vector<SlabReading>{{ft(0), Length()}, {ft(40), -Length::inches(0, 8)}});
  CHECK(clearSlab(clearSlab(job, 0, ft(0)), 0, ft(40)) == twoBareWalls());
}

TEST_CASE("props, chalk line and diagonals are stated and taken back") {
  Job job = setProps(twoBareWalls(), 1, true);
  job = setChalkLine(job, 1, -Length::inches(2));
  job = setDiagonal(job, 1, Diagonal::Rising, ft(42)).value();
  job = setDiagonal(job, 1, Diagonal::Falling, ft(41)).value();
  const WallSurvey& survey = job.walls[1].survey;
  CHECK(survey.propsInPlace);
  CHECK(survey.chalkLine == -Length::inches(2));
  CHECK(survey.diagonalRising == ft(42));
  CHECK(survey.diagonalFalling == ft(41));
  job = setProps(setChalkLine(job, 1, {}), 1, false);
  job = setDiagonal(setDiagonal(job, 1, Diagonal::Rising, {}).value(), 1, Diagonal::Falling, {}).value();
  CHECK(job == twoBareWalls());
}

TEST_CASE("a diagonal of nothing or less is refused, since such a job could not be read again") {
  for (const Length none : {Length(), -ft(3)}) CHECK_FALSE(setDiagonal(twoBareWalls(), 0, Diagonal::Rising, none));
  CHECK(setDiagonal(twoBareWalls(), 0, Diagonal::Rising, Length::nanometres(1)));
}
