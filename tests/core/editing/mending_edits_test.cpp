// Findings that one edit puts right.
#include <catch2/catch.hpp>

#include "core/editing/building_edits.h"
#include "core/editing/mending_edits.h"
#include "core/job/job_file.h"
#include "core/plan/plan.h"

using namespace ribwright;

namespace {

Job workshop() {
  auto job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json");
  REQUIRE(job.ok());
  return std::move(job).value();
}

const Finding& findingOf(const Plan& plan, const std::string& id) {
  for (const Finding& finding : plan.findings) {
    if (finding.id == id) return finding;
  }
  FAIL("no finding " << id);
  return plan.findings.front();
}

// The remedy of the first finding of this kind takes that finding away.
void checkPutRight(const Job& job, const std::string& id) {
  const Plan before = plan(job);
  const Finding& finding = findingOf(before, id);
  const auto remedy = mendingOf(job, finding);
  REQUIRE(remedy);
  const auto after = remedy->edit(job);
  REQUIRE(after.ok());
  CHECK(faultsOf(after.value()).empty());
  for (const Finding& left : plan(after.value()).findings) CHECK(left.key() != finding.key());
}

}  // namespace

TEST_CASE("openings without a place are put where they fit") {
  checkPutRight(buildingResized(workshop(), {Length::feet(50), Length::feet(40)}).value(), "opening-off-wall");
  Job job = workshop();
  job.walls[0].columns.bays.resize(1);
  checkPutRight(job, "opening-column-missing");
  job = workshop();
  job.walls[0].openings[2].place.column = 2;
  checkPutRight(job, "openings-overlap");
}

TEST_CASE("a wall without girts gets some") {
  Job job = workshop();
  job.walls[2].girts.clear();
  checkPutRight(job, "no-girts");
}

TEST_CASE("what a person has to decide has no remedy of its own") {
  const Job job = workshop();
  for (const Finding& finding : plan(job).findings) CHECK_FALSE(mendingOf(job, finding));
  Job full = job;
  full.walls[1].openings[0].width = Length::feet(50);  // wider than its wall
  CHECK_FALSE(mendingOf(full, findingOf(plan(full), "opening-off-wall")));
}
