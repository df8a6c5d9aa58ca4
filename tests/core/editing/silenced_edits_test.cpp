// Findings that are put aside with a reason, and taken back.
#include "core/editing/silenced_edits.h"

#include <catch2/catch.hpp>

#include "core/job/job_file.h"
#include "tests/core/checks/screwed_walls.h"

using namespace ribwright;

TEST_CASE("a finding is put aside with a reason, and comes back when that is taken back") {
  Job job = examples::quietWall();
  job.walls[0].start.rule = Start::Rule::SheetOnRidge;
  const std::vector<Finding> found = plan(job).findings;
  REQUIRE(found.size() == 1);
  const auto silenced = findingSilenced(job, found[0].key(), "  drawn so ");
  REQUIRE(silenced);
  CHECK(silenced.value().silenced == std::vector<SilencedFinding>{{found[0].key(), "drawn so"}});
  CHECK(plan(silenced.value()).findings.empty());
  CHECK(faultsOf(silenced.value()).empty());
  const auto again = findingSilenced(silenced.value(), found[0].key(), "seen again");
  REQUIRE(again);
  CHECK(again.value().silenced.size() == 1);
  CHECK(again.value().silenced[0].reason == "seen again");
  CHECK(silenceTakenBack(again.value(), found[0].key()) == job);
  CHECK(silenceTakenBack(job, "none") == job);
}

TEST_CASE("nothing is put aside without a reason") {
  CHECK(!findingSilenced({}, "no-girts|A|", " ").ok());
  CHECK(!findingSilenced({}, "", "seen").ok());
}
