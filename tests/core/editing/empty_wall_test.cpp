// What a wall lacks, and the edit that brings it.
#include <catch2/catch.hpp>

#include "core/editing/empty_wall.h"
#include "core/editing/new_job_file.h"
#include "core/job/job_file.h"
#include "core/plan/plan.h"

using namespace ribwright;

namespace {

Job newWorkshop() { return jobOf(shippedNewJob(UnitSystem::FeetInches), Words::of("en")).value(); }

}  // namespace

TEST_CASE("an open wall is hung with the sheets of the others") {
  Job job = newWorkshop();
  CHECK(lacking(job.walls[0]) == WallLacks::Nothing);
  job.walls[2].cladding = Cladding::Open;
  job.walls[2].bands.clear();
  CHECK(lacking(job.walls[2]) == WallLacks::Sheets);
  const Job hung = sheetsHung(job, 2).value();
  CHECK(hung.walls[2].bands[0].profile == job.walls[0].bands[0].profile);
  CHECK_FALSE(plan(hung).walls[2]->layout.pieces.empty());
}

TEST_CASE("bands without a profile take one, copied into the job") {
  Job job = newWorkshop();
  for (Wall& wall : job.walls) wall.bands = {Band{}};
  job.profiles.clear();
  job.patterns.clear();
  for (Wall& wall : job.walls) wall.pattern.clear();
  CHECK(lacking(job.walls[1]) == WallLacks::Profile);
  const Job hung = profileHung(job, 1, "rib-24-1-at-12").value();
  CHECK(hung.profiles.size() == 1);
  CHECK(faultsOf(hung).empty());
  CHECK_FALSE(plan(hung).walls[1]->layout.pieces.empty());
  CHECK_FALSE(profileHung(job, 1, "none such").ok());
}

TEST_CASE("girts come from a wall that has them, or at the heights that new jobs begin with") {
  Job job = newWorkshop();
  job.walls[0].girts.clear();
  CHECK(lacking(job.walls[0]) == WallLacks::Girts);
  const Job like = girtsAdded(job, 0).value();  // wall B has four, its upper two stand above the eave or near it
  CHECK(like.walls[0].girts.size() == 3);
  CHECK(like.walls[0].girts[2].height == Length::feet(11, 2));
  for (Wall& wall : job.walls) wall.girts.clear();
  const Job shipped = girtsAdded(job, 0).value();
  CHECK(shipped.walls[0].girts[1].height == Length::feet(7, 4));
  CHECK(shipped.walls[0].girts[1].id == "g2");
  CHECK_FALSE(girtsAdded(shipped, 0).ok());
  CHECK(faultsOf(shipped).empty());
  job.building.roof.eave = Length::feet(3);
  CHECK_FALSE(girtsAdded(job, 0).ok());
}
