// Patterns as they are stated: for which sheets, by whom confirmed, and whether their numbers can be meant.
#include <catch2/catch.hpp>

#include "core/checks/findings_of.h"
#include "core/layout/lay_out_wall.h"
#include "screwed_walls.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

// As they stand, without anyone confirming what was changed.
std::vector<Finding> unconfirmed(const Job& job, const std::string& id) {
  std::vector<Finding> found = findingsOfJob(job);
  std::erase_if(found, [&](const Finding& finding) { return finding.id != id; });
  return found;
}

Job twoBands() {
  Job job = quietWall();
  Wall& wall = job.walls[0];
  wall.bands.push_back(wall.bands[0]);
  wall.bands[1].from = Length::feet(8);
  return job;
}

Wall secondWall(const Wall& wall) {
  Wall other = wall;
  other.letter = "B";
  return other;
}

}  // namespace

TEST_CASE("a sheeted wall without a pattern is told, and in one of two bands, that band") {
  Job job = quietWall();
  CHECK(foundOf(job, "no-pattern").empty());
  job.walls[0].pattern.clear();
  const auto found = foundOf(job, "no-pattern");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "no-pattern|A|");
  CHECK(saysAll(found[0]));
  Job banded = twoBands();
  banded.walls[0].bands[0].pattern = "thirds";
  banded.walls[0].pattern.clear();
  const auto inBand = foundOf(banded, "no-pattern");
  REQUIRE(inBand.size() == 1);
  CHECK(inBand[0].key() == "no-pattern|A||band 2");
  job.walls[0].cladding = Cladding::Open;
  CHECK(foundOf(job, "no-pattern").empty());
}

TEST_CASE("one band in several runs is told once") {
  Job job = quietWall();
  job.walls[0].pattern.clear();
  job.walls[0].expansionJoints = {Length::feet(20)};
  CHECK(foundOf(job, "no-pattern").size() == 1);
}

TEST_CASE("a pattern for another profile stops") {
  Job job = quietWall();
  job.patterns[0].profile.clear();  // for any
  CHECK(foundOf(job, "pattern-of-other-profile").empty());
  job.profiles.push_back(job.profiles[0]);
  job.profiles[1].id = "rib-36-b";
  job.patterns[0].profile = "rib-36-b";
  const auto found = foundOf(job, "pattern-of-other-profile");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(saysAll(found[0]));
}

TEST_CASE("a pattern that nobody confirmed is told once for all walls, and an example says that it is one") {
  Job job = quietWall();
  job.walls.push_back(secondWall(job.walls[0]));
  CHECK(unconfirmed(job, "pattern-not-confirmed").empty());
  job.patterns[0].confirmation.reset();
  auto found = unconfirmed(job, "pattern-not-confirmed");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(found[0].key() == "pattern-not-confirmed||thirds");
  CHECK(wordsOf(found[0], "walls") == "A, B");
  CHECK(wordsOf(found[0], "example").empty());
  CHECK(wordsOf(found[0], "numbers") == numbersOf(job.patterns[0], job.screws));
  job.patterns[0].example = true;
  found = unconfirmed(job, "pattern-not-confirmed");
  REQUIRE(found.size() == 1);
  CHECK(wordsOf(found[0], "example").find("example") != std::string::npos);
  CHECK(saysAll(found[0]));
}

TEST_CASE("a pattern that no wall uses is not looked at") {
  Job job = quietWall();
  job.patterns.push_back(job.patterns[0]);
  job.patterns[1].id = "left over";
  job.patterns[1].confirmation.reset();
  CHECK(unconfirmed(job, "pattern-not-confirmed").empty());
}

TEST_CASE("a confirmation falls when a number changes, and rises with the digest that the remedy gives") {
  Job job = quietWall();
  CHECK(unconfirmed(job, "confirmation-fallen").empty());
  rowOf(job, SupportKind::Girt).offsets[0] += Length::inches(0, 1);
  const auto found = unconfirmed(job, "confirmation-fallen");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  const std::string remedy = Words::of("en").say("finding.confirmation-fallen.do", found[0].said(), {});
  CHECK(remedy.find(wordsOf(found[0], "numbers")) != std::string::npos);
  CHECK(remedy.find("S-4") != std::string::npos);
  CHECK(saysAll(found[0]));
  job.patterns[0].confirmation->numbers = wordsOf(found[0], "numbers");
  CHECK(unconfirmed(job, "confirmation-fallen").empty());
}

TEST_CASE("kinds of support without screws are told in one finding, which a further kind brings back") {
  Job job = quietWall();
  CHECK(foundOf(job, "pattern-kind-unstated").empty());
  std::erase_if(job.patterns[0].rows, [](const PatternRow& row) { return row.support == SupportKind::Base; });
  auto found = foundOf(job, "pattern-kind-unstated");
  REQUIRE(found.size() == 1);
  CHECK(found[0].key() == "pattern-kind-unstated|A||base");
  std::erase_if(job.patterns[0].rows, [](const PatternRow& row) { return row.support == SupportKind::Eave; });
  found = foundOf(job, "pattern-kind-unstated");
  REQUIRE(found.size() == 1);
  CHECK(found[0].key() == "pattern-kind-unstated|A||base eave");
  CHECK(saysAll(found[0]));
}

TEST_CASE("an offset at the cover belongs to the next sheet and stops") {
  Job job = quietWall();
  rowOf(job, SupportKind::Girt).offsets.push_back(Length::inches(36) - Length::nanometres(1));
  CHECK(foundOf(job, "offset-beyond-cover").empty());
  rowOf(job, SupportKind::Girt).offsets.back() = Length::inches(36);
  const auto found = foundOf(job, "offset-beyond-cover");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(countOf(found[0]) == 1);
  CHECK(lengthOf(found[0], "x") == Length::inches(36));
  CHECK(saysAll(found[0]));
}

TEST_CASE("of two rows for one kind and zone only one can be meant") {
  Job job = quietWall();
  job.patterns[0].rows.push_back(rowOf(job, SupportKind::Girt));
  job.patterns[0].rows.back().zone = Zone::Corner;
  CHECK(foundOf(job, "pattern-row-twice").empty());
  job.patterns[0].rows.push_back(rowOf(job, SupportKind::Girt));
  job.patterns[0].rows.push_back(rowOf(job, SupportKind::Girt));
  const auto found = foundOf(job, "pattern-row-twice");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Stop);
  CHECK(saysAll(found[0]));
}

TEST_CASE("a corner zone wants corner rows") {
  Job job = quietWall();
  job.settings.cornerZones = {CornerZones::Rule::Typed, Length()};
  CHECK(foundOf(job, "corner-pattern-missing").empty());
  job.settings.cornerZones.width = Length::feet(4);
  const auto found = foundOf(job, "corner-pattern-missing");
  REQUIRE(found.size() == 1);
  CHECK(found[0].grade == Grade::Look);
  CHECK(saysAll(found[0]));
  job.patterns[0].rows.push_back(rowOf(job, SupportKind::Girt));
  job.patterns[0].rows.back().zone = Zone::Corner;
  CHECK(foundOf(job, "corner-pattern-missing").empty());
}

// ASCE 7 reckons the edge strip from the building's least dimension; a free wall states none.
TEST_CASE("a rule for corner zones that needs the building's outline says so") {
  Job job = quietWall();
  CHECK(foundOf(job, "corner-zone-unknown").empty());
  job.settings.cornerZones.rule = CornerZones::Rule::Asce7;
  const auto found = foundOf(job, "corner-zone-unknown");
  REQUIRE(found.size() == 1);
  CHECK(found[0].source == "ASCE 7");
  CHECK(saysAll(found[0]));
  job.building.outline = {{Length(), Length()},
                          {Length::feet(40), Length()},
                          {Length::feet(40), Length::feet(60)},
                          {Length(), Length::feet(60)}};
  CHECK(foundOf(job, "corner-zone-unknown").empty());
}

TEST_CASE("an opening that is called like a sheet is told, on the wall where it stands") {
  Job job = quietWall();
  Opening door;
  door.id = "D1";
  door.place.distance = Length::feet(10);
  door.width = Length::feet(3);
  door.height = Length::feet(7);
  Penetration pipe;
  pipe.id = "A7.1";
  pipe.centre = Length::feet(6);
  pipe.width = pipe.height = Length::inches(4);
  pipe.place.distance = Length::feet(20);
  job.walls[0].openings = {door};
  CHECK(foundOf(job, "opening-id-like-mark").empty());  // the job has no wall D
  job.walls.push_back(secondWall(job.walls[0]));
  job.walls[1].letter = "D";
  job.walls[1].openings.clear();
  job.walls[0].penetrations = {pipe};
  const auto found = foundOf(job, "opening-id-like-mark");
  REQUIRE(found.size() == 1);
  CHECK(found[0].key() == "opening-id-like-mark|A|D1|and 1 more");
  CHECK(saysAll(found[0]));
  job.walls[0].openings[0].id = "D1a";
  job.walls[0].penetrations[0].id = "A7.";
  CHECK(foundOf(job, "opening-id-like-mark").empty());
}
