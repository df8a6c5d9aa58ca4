// The survey as a table, out and in.
#include "core/output/survey_table.h"

#include <catch2/catch.hpp>

#include "tests/core/fastening/measured_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job unmeasuredWall() { return levelWall({girt("g1", in(44)), girt("g2", in(88))}); }

Job measuredWall() {
  Job job = unmeasuredWall();
  WallSurvey& survey = job.walls[0].survey;
  survey.girts = {{"g1", {at(Length(), in(45, 12)), at(in(144), in(45, 11), in(0, 2))}},
                  {"g2", {at(Length(), in(89, 12))}},
                  {"eave", {at(in(72), in(145))}}};
  survey.slab = {{Length(), Length()}, {in(144), -in(0, 6)}};
  return job;
}

// "line 3, u_in: ..." of each fault.
std::string surveyFaults(const Job& job, const std::string& csv) {
  const auto read = withSurveyOf(job, csv);
  std::string all;
  if (read) return "none";
  for (const Fault& fault : read.faults()) all += oneLine(fault) + "\n";
  return all;
}

}  // namespace

TEST_CASE("a survey written as a table reads back the same, in inches and in millimetres") {
  const Job job = measuredWall();
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const std::string csv = csvText(surveyTable(job, units), units == UnitSystem::Millimetres);
    const auto read = withSurveyOf(unmeasuredWall(), csv);
    REQUIRE(read);
    CHECK(read.value() == job);
  }
  CHECK(surveyTable(job, UnitSystem::FeetInches).columns ==
        std::vector<std::string>{"wall", "line", "u_in", "height_in", "within_in", "by", "date"});
  CHECK(surveyTable(job, UnitSystem::FeetInches).rows[1] ==
        std::vector<std::string>{"A", "g1", "144", "45.6875", "0.125", "M", "day"});
}

TEST_CASE("edges that a table does not name keep their readings; those of one it names are replaced") {
  const auto read = withSurveyOf(measuredWall(), "wall,line,u_in,height_in\nA,g2,12,89.5\nA,g2,0,89\n");
  REQUIRE(read);
  const WallSurvey& survey = read.value().walls[0].survey;
  CHECK(survey.girts[0] == measuredWall().walls[0].survey.girts[0]);
  REQUIRE(survey.girts[1].readings.size() == 2);
  CHECK(survey.girts[1].readings[0].u == Length());
  CHECK(survey.girts[1].readings[1].height == in(89, 8));
  CHECK(survey.slab.size() == 2);
}

TEST_CASE("a table as spreadsheets write it: semicolons and commas, other columns, lengths as the tape reads") {
  const auto read = withSurveyOf(
      unmeasuredWall(),
      "note;height_mm;u_mm;line;wall\r\n\"said \"\"twice\"\"\";2260,6;0;g2;A\r\n;\"89-1/2\"\"\";3657,6;g2;A\r\n\r\n");
  REQUIRE(read);
  const auto& readings = read.value().walls[0].survey.girts.at(0).readings;
  REQUIRE(readings.size() == 2);
  CHECK(readings[0].height == Length::nanometres(2'260'600'000));
  CHECK(readings[1].height == in(89, 8));
  CHECK(readings[1].u == in(144));
}

TEST_CASE("what is wrong with a table is named by line and column, and nothing is taken") {
  const std::string head = "wall,line,u_in,height_in,within_in,by,date\n";
  const Job job = unmeasuredWall();
  CHECK(surveyFaults(job, "") == "line 1: no columns are named; the first line names them\n");
  CHECK(surveyFaults(job, "wall,line,u,height_in\n") == "line 1: no column is called u_in or u_mm\n");
  CHECK(surveyFaults(job, head + "B,g1,0,44,,,\n") == "line 2, wall: the job has no wall \"B\"\n");
  CHECK(surveyFaults(job, head + "\nA,g7,0,44,,,\n") ==
        "line 3, line: wall A has no girt \"g7\"; eave and slab are the other edges\n");
  CHECK(surveyFaults(job, head + "A,g1,0,4x4,,,\n").starts_with("line 2, height_in: \"4x4\""));
  CHECK(surveyFaults(job, head + "A,g1,-1,44,,,\n") ==
        "line 2, u_in: a station lies on the wall, from its left corner on\n");
  CHECK(surveyFaults(job, head + "A,g1,0,44,,,\nA,g1,0,45,,,\n") ==
        "line 3, u_in: there is another reading of this edge at the same station\n");
  CHECK(surveyFaults(job, head + "A,g1,0,44,0.25,,\n") ==
        "line 2, within_in: a stick check wants the name of who made it, and the date\n");
  CHECK(surveyFaults(job, head + "A,slab,0,0,0.25,M,day\n") ==
        "line 2, within_in: the slab edge takes no stick check; give its height\n");
  CHECK(surveyFaults(job, head + "A,g1,0\n") == "line 2: 3 fields, where 7 columns are named\n");
  CHECK(surveyFaults(job, head + "A,\"g1,0,44,,,\n") == "line 2: a quote is opened and never closed\n");
  CHECK(surveyFaults(job, head + "A,\"g1\"x,0,44,,,\n") ==
        "line 2: something stands behind a closing quote; double a quote that belongs to the field\n");
}
