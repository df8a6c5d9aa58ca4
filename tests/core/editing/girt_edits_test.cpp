// Girts added, moved, stopped, split and joined, and what was measured on them.
#include "core/editing/girt_edits.h"

#include "core/editing/next_ids.h"
#include "core/editing/survey_edits.h"
#include "tests/core/editing/edited_walls.h"

using namespace ribwright;

namespace {

const Girt& girtOn(const Job& job, const std::string& id) {
  const Girt* girt = byId(job.walls[A].girts, id);
  REQUIRE(girt);
  return *girt;
}

std::vector<std::string> idsOn(const Job& job) {
  std::vector<std::string> ids;
  for (const Girt& girt : job.walls[A].girts) ids.push_back(girt.id);
  return ids;
}

Job measured() {
  Job job = workshop();
  for (const int feet : {0, 20, 28, 40, 60})
    job = setReading(job, A, "g1", {ft(feet), ft(5), {}, "M. Reed", "2026-03-09"});
  return job;
}

std::vector<Length> stations(const Job& job, const std::string& girt) {
  std::vector<Length> all;
  for (const GirtSurvey& survey : job.walls[A].survey.girts) {
    for (const GirtReading& reading : survey.readings) {
      if (survey.girt == girt) all.push_back(reading.u);
    }
  }
  return all;
}

}  // namespace

TEST_CASE("a girt added at a height is as the one below it and takes its place among the girts") {
  Job job = workshop();
  job.walls[A].girts[0].flange = Girt::Flange::Up;
  job.walls[A].girts[0].to = ft(40);
  const Girt made = girtAtHeight(job, A, ft(8));
  CHECK(made.id == "g3");
  CHECK(made.flange == Girt::Flange::Up);
  CHECK_FALSE(made.to.has_value());
  job = given(addGirt(job, A, made));
  CHECK(idsOn(job) == std::vector<std::string>{"g1", "g3", "g2"});
  CHECK(girtAtHeight(job, A, ft(2)).flange == Girt::Flange::Up);
  job.walls[A].girts.clear();
  CHECK(given(addGirt(job, A, girtAtHeight(job, A, ft(2)))).walls[A].girts.size() == 1);
  refusal(addGirt(workshop(), A, girt("g2", ft(7))));
}

TEST_CASE("a girt moved up is the same girt at another height") {
  const Job job = given(girtMovedTo(workshop(), A, "g1", ft(5, 4)));
  CHECK(girtOn(job, "g1").height == ft(5, 4));
  CHECK(girtOn(job, "g2") == girtOn(workshop(), "g2"));
  refusal(girtMovedTo(workshop(), A, "g9", ft(5)));
}

TEST_CASE("a girt is stopped at a place and run on to its corner again") {
  const Job stopped = given(girtEndMovedTo(workshop(), A, "g1", GirtEnd::Right, ft(28)));
  CHECK(girtOn(stopped, "g1").to == ft(28));
  CHECK(given(girtEndMovedTo(stopped, A, "g1", GirtEnd::Right, std::nullopt)) == workshop());
  refusal(girtEndMovedTo(stopped, A, "g1", GirtEnd::Left, ft(28)));
  refusal(girtEndMovedTo(workshop(), A, "g1", GirtEnd::Left, ft(60)));
}

TEST_CASE("a girt that is split is two girts that meet, each with what was measured on it") {
  Job job = measured();
  job.walls[A].endLaps = {EndLaps::Where::AtGirts, {"g1"}, in(4), in(2), EndLaps::Order::ColumnByColumn};
  const Job split = given(girtSplitAt(job, A, "g1", ft(28)));
  CHECK(idsOn(split) == std::vector<std::string>{"g1", "g3", "g2"});
  CHECK(girtOn(split, "g1").to == ft(28));
  CHECK(girtOn(split, "g3").from == ft(28));
  CHECK_FALSE(girtOn(split, "g3").to.has_value());
  CHECK(stations(split, "g1") == std::vector<Length>{ft(0), ft(20), ft(28)});
  CHECK(stations(split, "g3") == std::vector<Length>{ft(40), ft(60)});
  CHECK(split.walls[A].endLaps.girts == std::vector<std::string>{"g1", "g3"});
  CHECK(given(girtRunThrough(split, A, "g1")) == job);
}

TEST_CASE("a girt split round a window stops at both jambs") {
  const Job split = given(girtSplitRound(measured(), A, "g1", "W1"));
  CHECK(girtOn(split, "g1").to == ft(28));
  CHECK(girtOn(split, "g3").from == ft(32));
  CHECK(stations(split, "g1") == std::vector<Length>{ft(0), ft(20), ft(28)});
  Job short1 = workshop();
  short1.walls[A].girts[0].to = ft(30);
  CHECK(girtOn(given(girtSplitRound(short1, A, "g1", "W1")), "g1").to == ft(28));
  short1.walls[A].girts[0].to = ft(28);
  refusal(girtSplitRound(short1, A, "g1", "W1"));
  refusal(girtSplitAt(short1, A, "g1", ft(28)));
}

TEST_CASE("girts measured at one station are not joined in silence") {
  Job job = given(girtSplitAt(workshop(), A, "g1", ft(28)));
  for (const char* id : {"g1", "g3"}) job = setReading(job, A, id, {ft(28), ft(5), {}, "M. Reed", "2026-03-09"});
  CHECK(refusal(girtRunThrough(job, A, "g1")).find("strike out") != std::string::npos);
}

TEST_CASE("only girts of one line are joined") {
  Job job = given(girtSplitAt(workshop(), A, "g1", ft(28)));
  job.walls[A].girts[1].height += in(0, 1);
  CHECK(given(girtRunThrough(job, A, "g1")).walls[A].girts.size() == 3);
}

// What was measured is a fact from site.
TEST_CASE("readings of a girt that is deleted stay, and no other girt is given them") {
  const Job job = given(girtRemoved(measured(), A, "g1"));
  CHECK(idsOn(job) == std::vector<std::string>{"g2"});
  CHECK(stations(job, "g1").size() == 5);
  Job other = job;
  other.walls[A].survey.girts[0].girt = "g7";
  CHECK(nextGirtId(other, A) == "g8");
}
