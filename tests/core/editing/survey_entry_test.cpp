// A cell of the survey as it is typed by someone who is read the tape.
#include "core/editing/survey_entry.h"

#include <catch2/catch.hpp>

#include "core/editing/survey_edits.h"
#include "core/job/job_file.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

Job oneBareWall() {
  Job job;
  job.name = "shed";
  job.walls.resize(1);
  job.walls[0].letter = "A";
  job.walls[0].bands.resize(1);
  return job;
}

const SurveyLine girtLine{SurveyLine::Of::Girt, "g1", 0, ft(0), ft(40)};
const SurveyLine slabLine{SurveyLine::Of::Slab, "", -1, ft(0), ft(40)};
const ReadBy reed{"M. Reed", "2026-03-09"};

std::string typed(const Job& job, const SurveyLine& line, Length u) { return typedText(job, 0, line, u); }

std::string faultOf(const Job& job, const SurveyLine& line, Length u, const char* text, const ReadBy& who) {
  const auto next = enterReading(job, 0, line, u, text, who);
  return next ? std::string() : next.faults().front().message;
}

}  // namespace

TEST_CASE("a reading is written down with who read it and when") {
  const auto job = enterReading(oneBareWall(), 0, girtLine, ft(10), "88-1/2", reed);
  REQUIRE(job);
  CHECK(job.value().walls[0].survey.girts[0].readings ==
        std::vector<GirtReading>{{ft(10), Length::sixtyFourths(88 * 64 + 32), {}, "M. Reed", "2026-03-09"}});
  CHECK(typed(job.value(), girtLine, ft(10)) == "7' 4-1/2\"");
  CHECK(faultsOf(job.value()).empty());
  CHECK(enterReading(oneBareWall(), 0, girtLine, ft(10), "88-1/2", {}).ok());  // a tape's own figure needs no name
}

TEST_CASE("the reading before is the nearest one to the left, on the same edge") {
  Job job = enterReading(oneBareWall(), 0, girtLine, ft(0), "88", reed).value();
  job = enterReading(job, 0, girtLine, ft(30), "90", reed).value();
  job = enterReading(job, 0, slabLine, ft(10), "-1/8", reed).value();
  job = enterReading(job, 0, girtLine, ft(20), "=", reed).value();
  CHECK(typed(job, girtLine, ft(20)) == typed(job, girtLine, ft(0)));
  CHECK_FALSE(faultOf(oneBareWall(), girtLine, ft(20), "=", reed).empty());
  CHECK_FALSE(faultOf(job, girtLine, ft(0), "=", reed).empty());
}

TEST_CASE("a stick check needs who read it and when") {
  const auto job = enterReading(oneBareWall(), 0, girtLine, ft(10), "88-1/2 +- 1/8", reed);
  REQUIRE(job);
  CHECK(job.value().walls[0].survey.girts[0].readings[0].within == Length::inches(0, 8));
  for (const ReadBy& who : {ReadBy{}, ReadBy{"M. Reed", " "}, ReadBy{"", "2026-03-09"}})
    CHECK(faultOf(oneBareWall(), girtLine, ft(10), "88-1/2 +- 1/8", who).find("who read it and when") !=
          std::string::npos);
  // "=" after a stick check is one itself
  CHECK_FALSE(faultOf(job.value(), girtLine, ft(20), "=", {}).empty());
}

TEST_CASE("the slab edge is a height and no stick check") {
  const auto job = enterReading(oneBareWall(), 0, slabLine, ft(10), "-1/8", reed);
  REQUIRE(job);
  CHECK(job.value().walls[0].survey.slab == std::vector<SlabReading>{{ft(10), -Length::inches(0, 8)}});
  CHECK_FALSE(faultOf(oneBareWall(), slabLine, ft(10), "0 +- 1/8", reed).empty());
}

TEST_CASE("blank text strikes a reading out") {
  const Job job = enterReading(oneBareWall(), 0, girtLine, ft(10), "88", reed).value();
  CHECK(enterReading(job, 0, girtLine, ft(10), "  ", reed).value() == oneBareWall());
  const Job edge = enterReading(oneBareWall(), 0, slabLine, ft(10), "0", reed).value();
  CHECK(enterReading(edge, 0, slabLine, ft(10), "", reed).value() == oneBareWall());
}

TEST_CASE("nothing is read where the edge is not, or cannot be told from another") {
  const SurveyLine half{SurveyLine::Of::Girt, "g2", 1, ft(20), ft(40)};
  const SurveyLine nameless{SurveyLine::Of::Girt, "", 2, ft(0), ft(40)};
  CHECK_FALSE(faultOf(oneBareWall(), half, ft(10), "88", reed).empty());
  CHECK_FALSE(faultOf(oneBareWall(), nameless, ft(10), "88", reed).empty());
  CHECK(faultOf(oneBareWall(), half, ft(20), "88", reed).empty());
}
