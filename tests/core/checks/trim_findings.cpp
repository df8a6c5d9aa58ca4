// What is found of a job's trim, and what is not.
#include <catch2/catch.hpp>

#include "core/job/trim_file.h"
#include "screwed_walls.h"

using namespace ribwright;

namespace {

// A quiet wall of 40 ft by 12 with a window, trimmed as it ships.
Job trimmed() {
  Job job = examples::quietWall();
  job.trims = shippedTrim(UnitSystem::FeetInches).trims;
  job.trimRules = shippedTrim(UnitSystem::FeetInches).rules;
  return job;
}

std::vector<Finding> trimFindings(const Job& job) {
  std::vector<Finding> found;
  for (const Finding& finding : plan(job).findings) {
    if (finding.id.starts_with("trim-")) found.push_back(finding);
  }
  return found;
}

const Finding* find(const std::vector<Finding>& findings, const std::string& id) {
  for (const Finding& finding : findings) {
    if (finding.id == id) return &finding;
  }
  return nullptr;
}

TrimRule& rule(Job& job, TrimRule::Where where) {
  return *std::find_if(job.trimRules.begin(), job.trimRules.end(),
                       [&](const TrimRule& one) { return one.where == where; });
}

void addDoor(Job& job, Length width) {
  Opening door;
  door.id = "D1";
  door.kind = Opening::Kind::OverheadDoor;
  door.place.distance = Length::feet(6);
  door.width = width;
  door.height = Length::feet(8);
  job.walls[0].openings.push_back(door);
}

TEST_CASE("Nothing is said of trim where a job states no rule") {
  Job job = trimmed();
  job.trimRules.clear();
  addDoor(job, Length::feet(16));
  CHECK(trimFindings(job).empty());
}

TEST_CASE("Trim longer than stock is spliced: one note a rule") {
  const auto found = trimFindings(trimmed());
  REQUIRE(found.size() == 1);  // the eave of 40 ft
  CHECK(found[0].id == "trim-longer-than-stock");
  CHECK(found[0].grade == Grade::Note);
  CHECK(found[0].mark == "eave");
  Job job = trimmed();
  for (Trim& trim : job.trims) trim.stocked = {Length::feet(40)};
  CHECK(trimFindings(job).empty());
}

TEST_CASE("A spliced head is looked at on its own") {
  Job job = trimmed();
  addDoor(job, Length::feet(14));
  CHECK(find(trimFindings(job), "trim-head-spliced") == nullptr);
  job.walls[0].openings[0].width += Length::nanometres(1);  // and 2 in of lips: 14 ft 2 in are sold
  const auto found = trimFindings(job);
  const Finding* spliced = find(found, "trim-head-spliced");
  REQUIRE(spliced);
  CHECK(spliced->grade == Grade::Look);
  CHECK(spliced->wall == job.walls[0].letter);
  CHECK(spliced->mark == "D1");
}

TEST_CASE("Places without a rule: one note for all of a kind") {
  Job job = trimmed();
  addDoor(job, Length::feet(10));
  std::erase_if(job.trimRules, [](const TrimRule& one) { return one.where == TrimRule::Where::Jamb; });
  const auto found = trimFindings(job);
  const auto count =
      std::count_if(found.begin(), found.end(), [](const Finding& f) { return f.id == "trim-without-rule"; });
  CHECK(count == 1);
  CHECK(find(found, "trim-without-rule")->mark == "jamb");
}

TEST_CASE("A rule without a trim, and one that leaves no length, are looked at once each") {
  Job job = trimmed();
  addDoor(job, Length::feet(10));
  rule(job, TrimRule::Where::Jamb).trim.clear();
  rule(job, TrimRule::Where::Head).allowance = -Length::feet(10);
  const auto found = trimFindings(job);
  CHECK(std::count_if(found.begin(), found.end(), [](const Finding& f) { return f.grade == Grade::Look; }) == 2);
  CHECK(find(found, "trim-rule-without-trim")->mark == "jamb");
  CHECK(find(found, "trim-without-length")->mark == "head");
}

TEST_CASE("A trim that is not stocked is noted, one whose stock is of no use looked at; unused ones are not") {
  Job job = trimmed();
  for (Trim& trim : job.trims) trim.stocked.clear();
  auto found = trimFindings(job);
  REQUIRE(found.size() == 1);
  CHECK(found[0].id == "trim-not-stocked");
  CHECK(found[0].mark == "eave-2x5");
  for (Trim& trim : job.trims) trim.stocked = {Length::inches(11)};
  found = trimFindings(job);
  REQUIRE(found.size() == 1);
  CHECK(found[0].id == "trim-stock-too-short");
}

TEST_CASE("What is found of trim is said in both languages") {
  Job job = trimmed();
  addDoor(job, Length::feet(20));
  rule(job, TrimRule::Where::Jamb).trim.clear();
  for (const char* language : {"en", "es"}) {
    for (const Finding& finding : trimFindings(job)) {
      for (const char* part : {".where", ".why", ".do"}) {
        const std::string said = Words::of(language).say("finding." + finding.id + part, finding.said(), {});
        CHECK(said.find('{') == std::string::npos);
        CHECK(said.find("finding.") == std::string::npos);
      }
    }
  }
}

}  // namespace
