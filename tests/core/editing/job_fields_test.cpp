// Fields of a job as a person sees and types them.
#include "core/editing/job_fields.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/job/job_file.h"
#include "core/job/pattern_numbers.h"
#include "tests/core/editing/sample_workshop.h"

using namespace ribwright;

namespace {

Field at(const Job& job, std::string_view path) {
  const auto field = fieldAt(job, path);
  INFO(path);
  REQUIRE(field);
  return field.value();
}

std::string text(const Job& job, std::string_view path) { return at(job, path).text; }

std::string whyNot(const Outcome<Job>& made) { return made ? std::string() : oneLine(made.faults().front()); }

Job shedWithDoor() {
  Job job;
  job.walls.resize(1);
  Wall& wall = job.walls[0];
  wall.letter = "A";
  wall.width = Length::feet(40);
  wall.bands.resize(1);
  Opening door;
  door.id = "D1";
  door.width = Length::feet(3);
  door.height = Length::feet(7);
  wall.openings = {door};
  Girt girt;
  girt.id = "g1";
  girt.height = Length::feet(5);
  wall.girts = {girt};
  return job;
}

}  // namespace

TEST_CASE("a field is shown as people type it, with what is usual") {
  const Job job = shedWithDoor();
  const Field drop = at(job, "walls[0].base.drop");
  CHECK(drop.kind == FieldKind::Length);
  CHECK(drop.owner == "base");
  CHECK(drop.text == "1-3/4\"");
  CHECK(drop.usual == "1-3/4\"");
  CHECK(Words::of("en").say(drop.limits, {}) == "at least 0\"");
  CHECK(Words::of("en").say(at(job, "settings.stack_limit").limits, {}) == "from 1 to 1000");
  CHECK(at(job, "walls[0].base.grade").limits.id.empty());
  CHECK(at(job, "walls[0].openings[0].width").required);
  const Field grade = at(job, "walls[0].base.grade");
  CHECK(grade.optional);
  CHECK(grade.absent);
  CHECK(grade.text.empty());
}

TEST_CASE("a list is counted, and shown item by item where it is asked for") {
  const Job job = shedWithDoor();
  const Field wall = at(job, "walls[0]");
  const auto girts =
      std::find_if(wall.fields.begin(), wall.fields.end(), [](const Field& f) { return f.key == "girts"; });
  CHECK(girts->kind == FieldKind::List);
  CHECK(girts->type == "girt");
  CHECK(girts->items == 1);
  CHECK(girts->fields.empty());
  CHECK(at(job, "walls[0].girts").fields.at(0).fields.at(0).text == "g1");
  CHECK(at(job, "walls[0].top").type == "face_point");
  CHECK(at(job, "walls[0].top").fields.empty());
}

TEST_CASE("bays are typed in one field") {
  const auto job = withField(shedWithDoor(), "walls[0].columns.bays", "20', 4@25', 20'");
  REQUIRE(job);
  CHECK(job.value().walls[0].columns.bays.size() == 6);
  CHECK(text(job.value(), "walls[0].columns.bays") == "20' 0\", 4@25' 0\", 20' 0\"");
}

TEST_CASE("arithmetic is reckoned, and a choice is one of the file's words") {
  const auto wide = withField(shedWithDoor(), "walls[0].openings[0].width", "3' + 2 * 1-1/2\"");
  REQUIRE(wide);
  CHECK(wide.value().walls[0].openings[0].width == Length::inches(39));
  const auto kind = withField(shedWithDoor(), "walls[0].openings[0].kind", "walk door");
  REQUIRE(kind);
  CHECK(kind.value().walls[0].openings[0].kind == Opening::Kind::WalkDoor);
}

TEST_CASE("a text that breaks a rule is refused with its place and what would be right") {
  CHECK(whyNot(withField(shedWithDoor(), "walls[0].openings[0].width", "0")) ==
        "walls[0].openings[0].width: 0\" is out of range; it may be more than 0, at most 10 km");
  CHECK_THAT(whyNot(withField(shedWithDoor(), "walls[0].base.drop", "7 fo")),
             Catch::StartsWith("walls[0].base.drop: \"7 fo\" is no length"));
  CHECK_THAT(whyNot(withField(shedWithDoor(), "walls[0].girts[0].typed_by", "edge")),
             Catch::Contains("\"edge\" is none of these: \"web line\", \"bottom\""));
  CHECK_THAT(whyNot(withField(shedWithDoor(), "walls[0].nothing", "1")),
             Catch::Contains("is nothing that this job has"));
}

TEST_CASE("rules between fields and between names hold") {
  CHECK_THAT(whyNot(withField(shedWithDoor(), "walls[0].pattern", "common")),
             Catch::Contains("\"common\" is none of this job's patterns"));
  CHECK_THAT(whyNot(withField(shedWithDoor(), "walls[0].openings[0].place.from", "column")),
             Catch::StartsWith("walls[0].openings[0].place.column: is missing"));
  const auto ridge = withField(shedWithDoor(), "building.roof.ridge_height", "16'");
  REQUIRE(ridge);
  CHECK_THAT(whyNot(withField(ridge.value(), "building.roof.slope", "4:12")), Catch::Contains("state one of them"));
}

TEST_CASE("what was wrong before does not keep other fields back, and does not come back unseen") {
  Job job = shedWithDoor();
  job.walls[0].pattern = "gone";
  CHECK(withField(job, "name", "barn"));
  CHECK_FALSE(withField(job, "walls[0].bands[0].pattern", "gone too"));
}

TEST_CASE("a blank text leaves an optional field out, and puts the usual value back") {
  auto job = withField(shedWithDoor(), "walls[0].base.grade", "-6\"");
  REQUIRE(job);
  CHECK(job.value().walls[0].base.grade == -Length::inches(6));
  job = withField(job.value(), "walls[0].base.grade", " ");
  REQUIRE(job);
  CHECK(job.value() == shedWithDoor());
  auto drop = withField(shedWithDoor(), "walls[0].base.drop", "2\"");
  REQUIRE(drop);
  CHECK(withField(drop.value(), "walls[0].base.drop", "").value() == shedWithDoor());
  CHECK_FALSE(withField(shedWithDoor(), "walls[0].openings[0].width", ""));
}

TEST_CASE("what is called by another id is called so wherever it is named") {
  Job job = shedWithDoor();
  job.walls[0].start.opening = "D1";
  job.walls[0].survey.girts = {{"g1", {}}};
  job.walls[0].endLaps.girts = {"g1"};
  job.silenced = {{"opening-off-the-wall|A|D1", "by others"}, {"opening-off-the-wall|B|D1", "by others"}};
  const auto door = withField(job, "walls[0].openings[0].id", "D7");
  REQUIRE(door);
  CHECK(door.value().walls[0].start.opening == "D7");
  CHECK(door.value().silenced[0].key == "opening-off-the-wall|A|D7");
  CHECK(door.value().silenced[1].key == "opening-off-the-wall|B|D1");
  const auto girt = withField(job, "walls[0].girts[0].id", "low");
  REQUIRE(girt);
  CHECK(girt.value().walls[0].survey.girts[0].girt == "low");
  CHECK(girt.value().walls[0].endLaps.girts[0] == "low");
}

TEST_CASE("another name of a screw or a profile takes no confirmation away") {
  Job job = sampleWorkshop();
  REQUIRE_FALSE(job.patterns.empty());
  job.patterns[0].confirmation = Confirmation{"S-4", "M. Reed", "2026-03-09", numbersOf(job.patterns[0], job.screws)};
  for (const char* path : {"profiles[0].id", "screws[0].id"}) {
    const auto named = withField(job, path, "other");
    INFO(path << whyNot(named));
    REQUIRE(named);
    CHECK(confirmedIs(named.value().patterns[0], named.value().screws) == Confirmed::Yes);
  }
  const auto moved = withField(job, "screws[0].diameter", "1/8\"");
  REQUIRE(moved);
  CHECK(confirmedIs(moved.value().patterns[0], moved.value().screws) == Confirmed::Fallen);
}

TEST_CASE("a wall's letter is kept where sheets are marked with it, or the outline gives its place") {
  Job job = shedWithDoor();
  job.silenced = {{"narrow-rip|A|A3", "seen"}};
  const auto called = withField(job, "walls[0].letter", "E");
  REQUIRE(called);
  CHECK(called.value().silenced[0].key == "narrow-rip|E|E3");
  job.facts.hung = {{"A1", Length::feet(3), "", ""}};
  CHECK_THAT(whyNot(withField(job, "walls[0].letter", "E")), Catch::Contains("a mark stays what it is"));
  CHECK_THAT(whyNot(withField(sampleWorkshop(), "walls[0].letter", "X")), Catch::Contains("takes its place from"));
}

TEST_CASE("an item that is named elsewhere is not removed") {
  Job job = shedWithDoor();
  CHECK(withItemRemoved(job, "walls[0].openings", 0));
  job.walls[0].start.opening = "D1";
  CHECK(whyNot(withItemRemoved(job, "walls[0].openings", 0)) ==
        "walls[0].openings[0]: \"D1\" is named by walls[0].start.opening; name another there first");
  CHECK_THAT(whyNot(withItemRemoved(job, "walls[0].girts", 4)), Catch::Contains("there is no place 4"));
}

TEST_CASE("items are moved and keep what they are") {
  Job job = shedWithDoor();
  for (const char* id : {"g2", "g3"}) {
    job = withItemAdded(job, "walls[0].girts", job.walls[0].girts.size()).value();
    CHECK(job.walls[0].girts.back().id == id);
  }
  job = withItemMoved(job, "walls[0].girts", 0, 2).value();
  CHECK(job.walls[0].girts[0].id == "g2");
  CHECK(job.walls[0].girts[2].id == "g1");
  job = withItemMoved(job, "walls[0].girts", 2, 0).value();
  CHECK(job.walls[0].girts[0].id == "g1");
}

TEST_CASE("a round penetration has one diameter, and a section ends at lip and leg") {
  Job job = shedWithDoor();
  job = withItemAdded(job, "walls[0].penetrations", 0).value();
  job = withField(job, "walls[0].penetrations[0].height", "10\"").value();
  CHECK(job.walls[0].penetrations[0].width == Length::inches(10));
  job = withItemAdded(job, "profiles", 0).value();
  const Length lip = job.profiles[0].over + Length::inches(0, 16);
  job = withField(job, "profiles[0].over", exactText(lip, job.units)).value();
  CHECK(job.profiles[0].section.front().x == -lip);
  job = withField(job, "profiles[0].cover", "40\"").value();
  CHECK(job.profiles[0].section.back().x == Length::inches(40) + job.profiles[0].under);
}

TEST_CASE("corners of an outline keep the walls on their edges") {
  const Job job = sampleWorkshop();
  CHECK_THAT(whyNot(withItemAdded(job, "building.outline", 1)), Catch::Contains("letters its edges in order"));
  CHECK_THAT(whyNot(withItemRemoved(job, "building.outline", 3)), Catch::Contains("letters its edges in order"));
  CHECK_FALSE(withItemMoved(job, "building.outline", 0, 1));
  const auto more = withItemAdded(job, "building.outline", job.building.outline.size());
  REQUIRE(more);
  CHECK(more.value().building.outline.size() == job.building.outline.size() + 1);
}

TEST_CASE("a free wall that is given a line keeps its width") {
  const auto job = withFieldStated(shedWithDoor(), "walls[0].line");
  REQUIRE(job);
  CHECK_FALSE(job.value().walls[0].width);
  CHECK(job.value().walls[0].line->to.x == Length::feet(40));
  CHECK_FALSE(withFieldAbsent(job.value(), "walls[0].letter"));
}

TEST_CASE("other units change what is shown, and no length") {
  const auto metric = withField(shedWithDoor(), "units", "millimetres");
  REQUIRE(metric);
  CHECK(text(metric.value(), "walls[0].openings[0].width") == "914.4 mm");
  CHECK(metric.value().walls[0].openings[0].width == Length::feet(3));
  CHECK(withField(metric.value(), "units", "feet and inches").value() == shedWithDoor());
}
