// An opening that is measured from somewhere else stands where it stood.
#include "core/editing/typed_fields.h"

#include <catch2/catch.hpp>

#include "core/editing/anchor_places.h"

using namespace ribwright;

namespace {

Job shedOnColumns() {
  Job job;
  job.walls.resize(1);
  Wall& wall = job.walls[0];
  wall.letter = "A";
  wall.width = Length::feet(60);
  wall.bands.resize(1);
  wall.columns.bays = {Length::feet(20), Length::feet(20), Length::feet(20)};
  Opening door;
  door.id = "D1";
  door.width = Length::feet(4);
  door.height = Length::feet(7);
  door.place.distance = Length::feet(23);
  wall.openings = {door};
  return job;
}

Length leftJamb(const Job& job) {
  const Wall& wall = job.walls[0];
  const Opening& door = wall.openings[0];
  return leftOf(door.place, door.width, anchoredPlace(job, wall, door.place).value());
}

const Anchor& place(const Job& job) { return job.walls[0].openings[0].place; }

}  // namespace

TEST_CASE("from a corner to a column and back an opening stays where it stands") {
  Job job = withTypedField(shedOnColumns(), "walls[0].openings[0].place.from", "column").value();
  CHECK(place(job).column == 2);
  CHECK(place(job).distance == Length::feet(3));
  CHECK(leftJamb(job) == Length::feet(23));
  job = withTypedField(job, "walls[0].openings[0].place.column", "3").value();
  CHECK(place(job).distance == -Length::feet(17));
  job = withTypedField(job, "walls[0].openings[0].place.to", "centre").value();
  CHECK(place(job).distance == -Length::feet(15));
  job = withTypedField(job, "walls[0].openings[0].place.from", "right corner").value();
  CHECK(place(job).distance == Length::feet(35));
  CHECK(leftJamb(job) == Length::feet(23));
  job = withTypedField(job, "walls[0].openings[0].place.to", "near jamb").value();
  CHECK(place(job).distance == Length::feet(33));
  CHECK(leftJamb(job) == Length::feet(23));
}

TEST_CASE("a distance that is typed moves it") {
  const Job job = withTypedField(shedOnColumns(), "walls[0].openings[0].place.distance", "10'").value();
  CHECK(leftJamb(job) == Length::feet(10));
}

TEST_CASE("without columns there is none to measure from") {
  Job job = shedOnColumns();
  job.walls[0].columns.bays.clear();
  CHECK_FALSE(withTypedField(job, "walls[0].openings[0].place.from", "column"));
}

TEST_CASE("a column that is not there is stated as it is typed, and found later") {
  const Job job = withTypedField(shedOnColumns(), "walls[0].openings[0].place.from", "column").value();
  const auto gone = withTypedField(job, "walls[0].openings[0].place.column", "9");
  REQUIRE(gone);
  CHECK(place(gone.value()).column == 9);
  CHECK(place(gone.value()).distance == Length::feet(3));
}

TEST_CASE("fields that name things offer those, and an absent one says what holds instead") {
  Job job = shedOnColumns();
  job.members.resize(2);
  job.members[0].id = "Z8";
  job.members[1].id = "C8";
  CHECK(namesFor(job, "walls[0].columns.member") == std::vector<std::string>{"Z8", "C8"});
  CHECK(namesFor(job, "walls[0].start.opening") == std::vector<std::string>{"D1"});
  CHECK(heldInstead(job, "walls[0].openings[0].clearances.head") == "1/2\"");
  CHECK(heldInstead(job, "walls[0].base.grade").empty());
}
