// Whether a page found on site is still what the job says.
#include "core/output/paper_age.h"

#include <catch2/catch.hpp>

#include "core/job/fingerprint.h"

using namespace ribwright;

namespace {

Job twoWalls() {
  Job job;
  for (const char* letter : {"A", "B"}) {
    Wall wall;
    wall.letter = letter;
    wall.width = Length::feet(40);
    Opening door;
    door.id = "D1";
    door.width = Length::feet(3);
    door.height = Length::feet(7);
    wall.openings = {door};
    job.walls.push_back(wall);
  }
  return job;
}

std::string said(const PaperAge& age) { return ageText(age, Words::of("en")); }

}  // namespace

TEST_CASE("a page of the job as it is, is current") {
  const Job job = twoWalls();
  for (const std::string& page : {fingerprintOf(job).text(), fingerprintOf(job, job.walls[1]).text()}) {
    const PaperAge age = paperAge(job, page).value();
    CHECK_FALSE(age.older);
    CHECK(said(age) == "Page " + page + " is current.");
  }
}

TEST_CASE("a page printed in the other system of units is current too") {
  const Job job = twoWalls();
  Job metric = job;
  metric.units = UnitSystem::Millimetres;
  const std::string page = fingerprintOf(metric).text();
  CHECK(page != fingerprintOf(job).text());
  CHECK_FALSE(paperAge(job, page).value().older);
  metric.walls[0].openings[0].width = Length::feet(4);
  CHECK(said(paperAge(metric, fingerprintOf(job).text()).value()).ends_with("What has changed since: openings."));
}

TEST_CASE("a page that is older than the job is a stop that says what has changed") {
  Job job = twoWalls();
  const std::string page = fingerprintOf(job, job.walls[0]).text();
  job.walls[0].openings[0].width = Length::feet(4);
  job.walls[0].pattern = "closer";
  const PaperAge age = paperAge(job, page).value();
  REQUIRE(age.older);
  CHECK(age.older->grade == Grade::Stop);
  CHECK(age.older->wall == "A");
  CHECK(said(age) == "Page " + page + " is older than the job. What has changed since: openings, screws.");
  const Words& words = Words::of("en");
  CHECK(words.say("finding.paper-older-than-job.why", age.older->said(), {}) ==
        "The job has changed since this page was printed, in: openings, screws.");
  for (const char* part : {"where", "why", "do"})
    CHECK(words.say(std::string("finding.paper-older-than-job.") + part, age.older->said(), {}).find('{') ==
          std::string::npos);
  CHECK_FALSE(paperAge(job, fingerprintOf(job, job.walls[1]).text()).value().older);  // the other wall is as it was
}

TEST_CASE("what is no fingerprint, or of a wall that the job does not have, is refused by name") {
  const auto none = paperAge(twoWalls(), "A.k3f");
  REQUIRE_FALSE(none);
  CHECK(none.faults()[0].place == "A.k3f");
  const auto other = paperAge(twoWalls(), "Q.k3f.9bq.77a.0c4.e2d.55b");
  REQUIRE_FALSE(other);
  CHECK(oneLine(other.faults()[0]).find("no wall Q") != std::string::npos);
}
