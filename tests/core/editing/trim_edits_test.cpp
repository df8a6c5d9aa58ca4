// Taking the trim that ships.
#include "core/editing/trim_edits.h"

#include <catch2/catch.hpp>

#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "core/job/trim_file.h"

using namespace ribwright;

namespace {

Job bare(UnitSystem units = UnitSystem::FeetInches) {
  Job job;
  job.units = units;
  Wall wall;
  wall.letter = "A";
  wall.width = Length::feet(40);
  wall.hang = Hang::LeftToRight;
  wall.bands = {Band{}};
  wall.bands[0].colour = "sand";
  job.walls = {wall};
  return job;
}

}  // namespace

TEST_CASE("a job takes the set of its units, in the colour of its sheets") {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const Job job = takeShippedTrim(bare(units)).value();
    CHECK(job.trimRules == shippedTrim(units).rules);
    REQUIRE(job.trims.size() == shippedTrim(units).trims.size());
    for (const Trim& trim : job.trims) CHECK(trim.colour == "sand");
    CHECK(faultsOf(job).empty());
  }
}

TEST_CASE("what the job states of its trim stays, and is not stated twice") {
  Job job = bare();
  Trim own = shippedTrim(UnitSystem::FeetInches).trims[0];
  own.colour = "red";
  job.trims = {own};
  TrimRule head;
  head.id = "jamb";  // called like another of the set
  head.where = TrimRule::Where::Head;
  head.trim = own.id;
  job.trimRules = {head};
  const Job taken = takeShippedTrim(job).value();
  CHECK(taken.trims[0] == own);
  CHECK(taken.trimRules[0] == head);
  CHECK_FALSE(byId(taken.trimRules, "head"));
  CHECK(byId(taken.trimRules, "jamb 2")->where == TrimRule::Where::Jamb);
  CHECK_FALSE(byId(taken.trims, "head-3x1.5x1"));  // no rule that came names it
  CHECK(faultsOf(taken).empty());
}

TEST_CASE("taking it twice is a fault that says so") {
  const Job job = takeShippedTrim(bare()).value();
  CHECK_FALSE(takeShippedTrim(job).ok());
}
