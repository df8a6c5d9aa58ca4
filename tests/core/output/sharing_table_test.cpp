// The table of shared blanks: one row a part, the saving once a blank.
#include "core/output/sharing_table.h"

#include <catch2/catch.hpp>

#include "tests/core/layout/example_walls.h"

using namespace ribwright;

namespace {

Job turnableGable() {
  Job job = examples::gable40();
  Profile& profile = job.profiles.front();
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
  job.settings.sharing.reach = Sharing::Reach::On;
  return job;
}

}  // namespace

TEST_CASE("each part of a shared blank has its row") {
  const Job job = turnableGable();
  const Table table = sharingTable(job, plan(job), UnitSystem::FeetInches);
  REQUIRE(table.rows.size() == 12);
  using Row = std::vector<std::string>;
  CHECK(table.rows[0] == Row{"1", "rake pair", "rib-36", "0.0187008", "sand", "26' 4-1/2\"", "316.5", "1", "A2", "A",
                             "no", "no", "0", "38.25", "0", "170.5", "12.5", "6"});
  CHECK(table.rows[1] == Row{"1", "rake pair", "rib-36", "0.0187008", "sand", "26' 4-1/2\"", "316.5", "2", "A1", "A",
                             "yes", "yes", "0", "38.25", "158", "316.5", "", "6"});
}

TEST_CASE("the table of shared blanks in millimetres") {
  const Job job = turnableGable();
  const Table table = sharingTable(job, plan(job), UnitSystem::Millimetres);
  CHECK(table.columns[6] == "length_mm");
  CHECK(table.rows[0][6] == "8039.1");
  CHECK(table.rows[0][16] == "317.5");
}

TEST_CASE("where nothing shares the table has no rows") {
  Job job = turnableGable();
  job.settings.sharing.reach = Sharing::Reach::Off;
  CHECK(sharingTable(job, plan(job), UnitSystem::FeetInches).rows.empty());
}
