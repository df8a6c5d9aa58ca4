// Where trim goes and what is measured there, worked by hand in feet and inches.
#include <catch2/catch.hpp>

#include "trimmed_by_hand.h"

namespace ribwright {
namespace {

Job withOpening(const Opening& opening) {
  Job job = workshop();
  job.walls[0].openings = {opening};
  return job;
}

TEST_CASE("A window of 4 ft by 3 is trimmed on four sides, steel to steel where its trim is flush") {
  const Trimmed trimmed(withOpening(openingOf("W1", Kind::Window, feet(10), feet(4), feet(3), feet(3, 6))));
  CHECK(trimmed.sizes(Where::Head, "A") == Lengths{feet(4)});
  CHECK(trimmed.sizes(Where::Sill, "A") == Lengths{feet(4)});
  CHECK(trimmed.sizes(Where::Jamb, "A") == Lengths{feet(3), feet(3)});
  const auto jambs = trimmed.places(Where::Jamb, "A");
  CHECK(jambs[0].side == TrimPlace::Side::Left);
  CHECK(jambs[0].from == FaceVertex{feet(10), feet(3, 6)});
  CHECK(jambs[0].to == FaceVertex{feet(10), feet(6, 6)});
  CHECK(jambs[1].from.u == feet(14));
}

TEST_CASE("Head and sill reach over jamb trims of 3 in, covers from steel to steel") {
  Opening window = openingOf("W1", Kind::Window, feet(10), feet(4), feet(3), feet(3, 6));
  window.jambTrim = inch(3);
  const Trimmed trimmed(withOpening(window));
  CHECK(trimmed.sizes(Where::Head, "A") == Lengths{feet(4, 6)});
  CHECK(trimmed.sizes(Where::Sill, "A") == Lengths{feet(4, 6)});
  CHECK(trimmed.sizes(Where::HeaderCover, "A") == Lengths{feet(4)});
  CHECK(trimmed.places(Where::Head, "A")[0].from.u == feet(9, 9));
}

TEST_CASE("An overhead door of 10 ft by 9: jamb trims from the sheets' bottom, covers from the concrete, no sill") {
  const Trimmed trimmed(withOpening(openingOf("D1", Kind::OverheadDoor, feet(20), feet(10), feet(9), Length())));
  CHECK(trimmed.sizes(Where::Jamb, "A") == Lengths{feet(9, 1, 48), feet(9, 1, 48)});
  CHECK(trimmed.sizes(Where::JambCover, "A") == Lengths{feet(9), feet(9)});
  CHECK(trimmed.sizes(Where::HeaderCover, "A") == Lengths{feet(10)});
  CHECK(trimmed.sizes(Where::Sill, "A").empty());
}

TEST_CASE("Where the floor steps down beside a door, each jamb goes down to the sheets beside it") {
  Job job = withOpening(openingOf("D1", Kind::WalkDoor, feet(20), feet(3), feet(7), Length()));
  job.walls[0].base.steps = {{feet(23), -inch(8)}};
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::Jamb, "A") == Lengths{feet(7, 1, 48), feet(7, 9, 48)});
  CHECK(trimmed.sizes(Where::JambCover, "A") == Lengths{feet(7), feet(7)});
}

TEST_CASE("An opening up to the top of the sheets has no head, and its jambs end where the sheets do") {
  const Trimmed trimmed(withOpening(openingOf("F1", Kind::Framed, feet(20), feet(10), feet(12), Length())));
  CHECK(trimmed.sizes(Where::Head, "A").empty());
  CHECK(trimmed.sizes(Where::Jamb, "A") == Lengths{feet(12, 1, 16), feet(12, 1, 16)});
}

TEST_CASE("Behind a wall of 4 ft an opening is trimmed only as far as the sheets come down") {
  Job job = withOpening(openingOf("W1", Kind::Window, feet(10), feet(4), feet(3), feet(3)));
  job.walls[0].openings.push_back(openingOf("W2", Kind::Window, feet(20), feet(4), feet(2), feet(1)));
  job.walls[0].base.form = Base::Form::OnWall;
  job.walls[0].base.shelf = feet(4);
  const Trimmed trimmed(job);  // sheets end at 4 ft 1/4 in
  CHECK(trimmed.sizes(Where::Jamb, "A") == Lengths{feet(1, 11, 48), feet(1, 11, 48)});
  CHECK(trimmed.sizes(Where::Sill, "A").empty());
  for (const TrimPlace& place : trimmed.places()) CHECK(place.opening != "W2");
}

TEST_CASE("Openings off the wall, or in no column, are no places") {
  Job job = withOpening(openingOf("W1", Kind::Window, feet(61), feet(4), feet(3), feet(3)));
  job.walls[0].openings.push_back(openingOf("W2", Kind::Window, feet(1), feet(4), feet(3), feet(3)));
  job.walls[0].openings[1].place.from = Anchor::From::Column;
  job.walls[0].openings[1].place.column = 7;
  const Trimmed trimmed(job);
  for (const TrimPlace& place : trimmed.places()) CHECK(place.opening.empty());
}

TEST_CASE("Rakes of a 40 ft gable that rises 6 ft are 20 ft 10-9/16 in each, measured along the slope") {
  const Trimmed trimmed(workshop());
  // The root of 240^2 + 72^2 is 250.567... in: 6 364 410 737.0 nm and a little, so one nanometre more.
  const Int128 run = Length::feet(20).nanometres(), rise = Length::feet(6).nanometres();
  const auto rakes = trimmed.sizes(Where::Rake, "B");
  REQUIRE(rakes.size() == 2);
  const Int128 size = rakes[0].nanometres();
  CHECK(size * size >= run * run + rise * rise);
  CHECK((size - 1) * (size - 1) < run * run + rise * rise);
  CHECK(rakes[1] == rakes[0]);
  CHECK(roundTo(rakes[0], Length::sixtyFourths(4)) == feet(20, 10, 36));
  CHECK(trimmed.sizes(Where::Eave, "A") == Lengths{feet(60)});
  CHECK(trimmed.sizes(Where::Eave, "B").empty());
  CHECK(trimmed.places(Where::Rake, "B")[1].number == 2);
  CHECK(trimmed.places(Where::Eave, "A")[0].number == 0);
}

TEST_CASE("A slope of 3 on 4 is exact: 20 ft along, 15 up, 25 of rake") {
  Job job = workshop();
  job.building.roof.ridgeHeight = feet(27);
  CHECK(Trimmed(job).sizes(Where::Rake, "D") == Lengths{feet(25), feet(25)});
}

TEST_CASE("A top stated by more points than it needs is one rake; a level part between is an eave") {
  Job job = workshop();
  job.walls[1].top = {
      {feet(0), feet(12)}, {feet(4), feet(15)}, {feet(8), feet(18)}, {feet(20), feet(18)}, {feet(40), feet(3)}};
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::Rake, "B") == Lengths{feet(10), feet(25)});
  CHECK(trimmed.sizes(Where::Eave, "B") == Lengths{feet(12)});
}

TEST_CASE("Corners go from the lower of both bottoms to the lower of both tops") {
  Job job = workshop();
  job.walls[1].base.form = Base::Form::OnWall;
  job.walls[1].base.shelf = feet(2);
  job.walls[2].eaveHoldDown = feet(1);
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::OutsideCorner, "A") == Lengths{feet(12, 1, 16)});
  CHECK(trimmed.sizes(Where::OutsideCorner, "B") == Lengths{feet(11, 1, 48)});
  CHECK(trimmed.sizes(Where::OutsideCorner, "D") == Lengths{feet(12, 1, 16)});
  CHECK(trimmed.sizes(Where::InsideCorner, "A").empty());
  CHECK(trimmed.places(Where::OutsideCorner, "D")[0].other == "A");
}

TEST_CASE("A corner beside an open wall closes the sheeted one; between two open walls there is none") {
  Job job = workshop();
  job.walls[0].cladding = Cladding::Open;
  job.walls[1].cladding = Cladding::ByOthers;
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::OutsideCorner, "A").empty());
  CHECK(trimmed.sizes(Where::OutsideCorner, "B") == Lengths{feet(12, 1, 16)});
  CHECK(trimmed.places(Where::OutsideCorner, "D")[0].size == feet(12, 1, 16));
  CHECK(trimmed.sizes(Where::Eave, "A").empty());
}

TEST_CASE("An L has five outside corners and one inside") {
  Job job = workshop();
  const Length none;
  job.building.roof = {};
  job.building.roof.kind = Roof::Kind::Level;
  job.building.roof.eave = feet(12);
  job.building.outline = {{none, none},         {feet(60), none},     {feet(60), feet(20)},
                          {feet(30), feet(20)}, {feet(30), feet(40)}, {none, feet(40)}};
  for (const char* letter : {"E", "F"}) {
    Wall wall = job.walls[0];
    wall.letter = letter;
    job.walls.push_back(wall);
  }
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::InsideCorner, "C") == Lengths{feet(12, 1, 16)});
  CHECK(trimmed.piece("CD corner").trim == "inside-corner-3x3");
  int outside = 0;
  for (const TrimPlace& place : trimmed.places()) outside += place.where == Where::OutsideCorner ? 1 : 0;
  CHECK(outside == 5);
}

TEST_CASE("Where the outline goes straight on there is no corner") {
  Job job = workshop();
  job.building.roof.kind = Roof::Kind::Level;
  job.building.outline = {{Length(), Length()}, {feet(30), Length()}, {feet(60), Length()}, {feet(30), feet(40)}};
  CHECK(Trimmed(job).sizes(Where::OutsideCorner, "A").empty());
}

TEST_CASE("Base trim runs between the doors; a sheet that hangs over the slab has none") {
  Job job = withOpening(openingOf("D1", Kind::OverheadDoor, feet(20), feet(10), feet(9), Length()));
  job.walls[0].openings.push_back(openingOf("W1", Kind::Window, feet(40), feet(4), feet(3), feet(3)));
  CHECK(Trimmed(job).sizes(Where::Base, "A").empty());
  job.walls[0].base.form = Base::Form::BaseTrim;
  CHECK(Trimmed(job).sizes(Where::Base, "A") == Lengths{feet(20), feet(30)});
  job.walls[0].base.steps = {{feet(45), -inch(8)}};
  const Trimmed stepped(job);
  CHECK(stepped.sizes(Where::Base, "A") == Lengths{feet(20), feet(15), feet(15)});
  CHECK(stepped.places(Where::Base, "A")[2].from == FaceVertex{feet(45), inch(-8) + inch(0, 16)});
}

TEST_CASE("A transition at 4 ft goes past openings above and below it, not through those across it") {
  Job job = withOpening(openingOf("D1", Kind::WalkDoor, feet(10), feet(3), feet(7), Length()));
  job.walls[0].openings.push_back(openingOf("W1", Kind::Window, feet(20), feet(4), feet(3), feet(3)));
  job.walls[0].openings.push_back(openingOf("W2", Kind::Window, feet(30), feet(4), feet(3), feet(5)));
  job.walls[0].bands.push_back(band("red"));
  job.walls[0].bands[1].from = feet(4);
  CHECK(Trimmed(job).sizes(Where::Transition, "A") == Lengths{feet(10), feet(7), feet(36)});
}

TEST_CASE("In a gable a transition goes as far as there are sheets above it") {
  Job job = workshop();
  job.walls[1].bands.push_back(band("red"));
  job.walls[1].bands[1].from = feet(15);
  job.walls[1].rakeHoldDown = Length();
  const Trimmed trimmed(job);
  CHECK(trimmed.sizes(Where::Transition, "B") == Lengths{feet(20)});
  CHECK(trimmed.places(Where::Transition, "B")[0].from == FaceVertex{feet(10), feet(15)});
}

}  // namespace
}  // namespace ribwright
