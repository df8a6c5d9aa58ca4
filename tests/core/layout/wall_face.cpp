#include "core/layout/wall_face.h"

#include <catch2/catch.hpp>

#include "example_walls.h"

using namespace ribwright;

namespace {

Job rectangle(Length length, Length width) {
  Job job = examples::freeWall(Length::feet(40));
  job.walls[0].width.reset();
  job.walls[0].top.clear();
  job.walls[0].hang = Hang::ByRule;
  job.building.outline = {{Length(), Length()}, {length, Length()}, {length, width}, {Length(), width}};
  for (const char* letter : {"B", "C", "D"}) {
    job.walls.push_back(job.walls[0]);
    job.walls.back().letter = letter;
  }
  return job;
}

WallFace face(const Job& job, std::size_t wall) { return wallFace(job, job.walls.at(wall)).value(); }
Length topAt(const WallFace& face, Length u) { return face.top.heightAt(u, Beside::Right); }

}  // namespace

TEST_CASE("ends B and D of a gable: the eaves lie at A and C") {
  Job job = rectangle(Length::feet(60), Length::feet(40));
  job.building.roof = {Roof::Kind::Gable, Roof::Ends::BD, Length::feet(12), {}, {}, Slope::per12(4), {}, {}};
  CHECK(face(job, 0).width == Length::feet(60));
  CHECK(topAt(face(job, 0), Length::feet(1)) == Length::feet(12));
  CHECK(face(job, 1).width == Length::feet(40));
  CHECK(topAt(face(job, 1), Length::feet(20)) == Length::feet(18, 8));
  CHECK(face(job, 1).ridge == Length::feet(20));
  CHECK(topAt(face(job, 3), Length::feet(3)) == Length::feet(13));
  CHECK_FALSE(face(job, 2).ridge);
}

// Width 12 m, eave 8 m, ridge 9 m: 2:12 and 9.46 degrees (a published worked example of roof slopes).
TEST_CASE("a ridge stated by its height, off the middle, with the far eave of the same slope") {
  Job job = rectangle(Length::millimetres(30'000), Length::millimetres(12'000));
  job.building.roof = {Roof::Kind::Gable,
                       Roof::Ends::BD,
                       Length::millimetres(8'000),
                       Length::millimetres(3'000),
                       Length::millimetres(8'500),
                       {},
                       {},
                       {}};
  CHECK(topAt(face(job, 1), Length::millimetres(3'000)) == Length::millimetres(8'500));
  CHECK(face(job, 2).top.heightAt(Length(), Beside::Right) == Length::millimetres(7'000));
  // Seen from outside, wall D has the first eave at its right corner.
  CHECK(face(job, 3).top.heightAt(Length::millimetres(12'000), Beside::Left) == Length::millimetres(8'000));
  CHECK(face(job, 3).top.heightAt(Length(), Beside::Right) == Length::millimetres(7'000));
}

TEST_CASE("ends A and C of a single slope: low at D, high at B") {
  Job job = rectangle(Length::feet(30), Length::feet(50));
  job.building.roof.kind = Roof::Kind::SingleSlope;
  job.building.roof.ends = Roof::Ends::AC;
  job.building.roof.eave = Length::feet(10);
  job.building.roof.slope = Slope::per12(1);
  CHECK(topAt(face(job, 1), Length::feet(10)) == Length::feet(12, 6));
  CHECK(topAt(face(job, 3), Length::feet(10)) == Length::feet(10));
  CHECK(topAt(face(job, 0), Length::feet(12)) == Length::feet(11));
  CHECK(topAt(face(job, 2), Length::feet(12)) == Length::feet(11, 6));
}

TEST_CASE("a slope of 45 degrees rises as far as it runs") {
  Job job = rectangle(Length::feet(30), Length::feet(20));
  job.building.roof = {Roof::Kind::Gable,
                       Roof::Ends::BD,
                       Length::feet(10),
                       {},
                       {},
                       Slope{Slope::As::Angle, {}, Length::inches(12), Angle::degrees(45)},
                       {},
                       {}};
  CHECK(topAt(face(job, 1), Length::feet(10)) == Length::feet(20));
}

TEST_CASE("sheets stay below the steel by the hold-down, level and sloped") {
  Job job = examples::gable40();
  job.walls[0].rakeHoldDown = Length::inches(1);
  CHECK(topAt(face(job, 0), Length::feet(3)) == Length::feet(12, 11));
  Job level = examples::freeWall(Length::feet(20));
  level.walls[0].eaveHoldDown = Length::inches(0, 32);
  CHECK(topAt(face(level, 0), Length::feet(3)) == Length::feet(11, 11, 32));
}

TEST_CASE("the four base forms: where sheets end") {
  Job job = examples::freeWall(Length::feet(20));
  Base& base = job.walls[0].base;
  const auto bottom = [&] { return face(job, 0).bottom.heightAt(Length::feet(5), Beside::Right); };
  CHECK(bottom() == -Length::inches(1, 48));
  base.form = Base::Form::Notch;  // ledge 1-1/2 in deep, 1/4 in gap
  CHECK(bottom() == -Length::inches(1, 16));
  base.form = Base::Form::BaseTrim;
  base.shelf = -Length::inches(1);
  CHECK(bottom() == -Length::inches(0, 48));
  base.form = Base::Form::OnWall;
  base.shelf = Length::feet(4);
  CHECK(bottom() == Length::feet(4, 0, 16));
}

TEST_CASE("a stepped base is level runs") {
  Job job = examples::freeWall(Length::feet(20));
  job.walls[0].base.drop = Length();
  job.walls[0].base.steps = {
      {Length(), -Length::feet(1)}, {Length::feet(8), Length()}, {Length::feet(15), Length::feet(1)}};
  const HeightLine bottom = face(job, 0).bottom;
  CHECK(bottom.heightAt(Length::feet(8), Beside::Left) == -Length::feet(1));
  CHECK(bottom.heightAt(Length::feet(8), Beside::Right) == Length());
  CHECK(bottom.heightAt(Length::feet(19), Beside::Left) == Length::feet(1));
}

TEST_CASE("a wall's width is the distance of its corners: 3, 4, 5") {
  Job job = examples::freeWall(Length::feet(1));
  job.walls[0].width.reset();
  job.walls[0].line = PlanLine{{Length::feet(1), Length::feet(1)}, {Length::feet(31), Length::feet(41)}};
  job.walls[0].top = {{Length(), Length::feet(9)}};
  CHECK(face(job, 0).width == Length::feet(50));
}

TEST_CASE("what has no meaning is a fault with place and remedy") {
  Job job = rectangle(Length::feet(30), Length::feet(20));
  CHECK(oneLine(wallFace(job, job.walls[0]).faults()[0]).find("walls.A.top: is not stated") == 0);
  job.building.roof = {
      Roof::Kind::Gable, Roof::Ends::BD, Length::feet(10), Length::feet(21), {}, Slope::per12(1), {}, {}};
  CHECK(oneLine(wallFace(job, job.walls[1]).faults()[0]).find("building.roof.ridge_at: the ridge stands outside") == 0);
  job.walls[0].letter = "Q";
  CHECK_FALSE(wallFace(job, job.walls[0]).ok());
}

TEST_CASE("openings keep the anchor they were stated by") {
  Job job = examples::freeWall(Length::feet(40));
  Wall& wall = job.walls[0];
  wall.columns.offset = Length::inches(6);
  wall.columns.bays = {Length::feet(20), Length::feet(19)};
  Opening window;
  window.width = Length::feet(4);
  window.place = {Anchor::From::Column, 2, Length::feet(2), Anchor::To::NearJamb};
  CHECK(leftJamb(wall, Length::feet(40), window) == Length::feet(22, 6));
  window.place = {Anchor::From::RightCorner, 0, Length::feet(3), Anchor::To::NearJamb};
  CHECK(leftJamb(wall, Length::feet(40), window) == Length::feet(33));
  window.place = {Anchor::From::RightCorner, 0, Length::feet(3), Anchor::To::Centre};
  CHECK(leftJamb(wall, Length::feet(40), window) == Length::feet(35));
  window.place = {Anchor::From::Column, 4, Length(), Anchor::To::Centre};
  CHECK_FALSE(leftJamb(wall, Length::feet(40), window));
}
