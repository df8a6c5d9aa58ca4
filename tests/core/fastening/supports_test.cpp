// Screw faces and rows of a wall's steel as the plans state them.
#include <catch2/catch.hpp>

#include "core/fastening/upright_margin.h"
#include "example_screws.h"

using namespace ribwright;
using namespace ribwright::examples;

namespace {

Job wallWith(std::vector<Girt> girts) {
  Job job =
      screwed(freeWall(Length::feet(40)), everywhere({Length::inches(2), Length::inches(14), Length::inches(26)}));
  job.walls[0].girts = std::move(girts);
  return job;
}

Opening window() {
  Opening made;
  made.id = "W1";
  made.place.distance = Length::feet(10);
  made.width = Length::feet(4);
  made.height = Length::feet(3);
  made.sill = Length::feet(3);
  return made;
}

}  // namespace

TEST_CASE("a girt's row does not depend on which edge it is typed by") {
  using By = Girt::TypedBy;
  const Length row = Length::inches(86, 48);
  for (const auto& [by, height] : {std::pair(By::WebLine, Length::inches(88)), std::pair(By::Top, Length::inches(88)),
                                   std::pair(By::Bottom, Length::inches(85, 32)), std::pair(By::Centre, row)}) {
    CHECK(ScrewedWall(wallWith({girt("g", height, by, Girt::Flange::Down)})).row("g").stretches[0].row == row);
  }
  // Flange up: the web line is its lower edge.
  const ScrewedWall up(wallWith({girt("g", Length::inches(85, 32), By::WebLine, Girt::Flange::Up)}));
  CHECK(up.row("g").stretches[0].row == row);
}

TEST_CASE("an interrupted girt has a free end: screws keep 1.5 d and the drift from it") {
  Girt half = girt("g", Length::feet(6));
  half.to = Length::inches(195, 32);
  const ScrewedWall at(wallWith({half}));
  // u = 195-1/2 (x = 14 of sheet 6) would stand on the very end.
  REQUIRE(at.refused(Refusal::Why::OffScrewFace).size() == 1);
  CHECK(at.refused(Refusal::Why::OffScrewFace)[0].u == Length::inches(195, 32));
  half.to = Length::inches(195, 32) + Length::nanometres(8'229'600) + Length::inches(0, 8);
  CHECK(ScrewedWall(wallWith({half})).refused(Refusal::Why::OffScrewFace).empty());
}

TEST_CASE("girts nested at a lap have one row, on what their faces have in common") {
  Girt left = girt("g1", Length::feet(6)), right = girt("g2", Length::feet(6) + Length::inches(0, 32));
  left.to = Length::feet(22);
  right.from = Length::feet(18);
  const ScrewedWall wall(wallWith({left, right}));
  const auto& stretches = wall.row("g1").stretches;
  REQUIRE(stretches.size() == 2);
  CHECK(stretches[1].name == "g1+g2");
  CHECK(stretches[1].from == Length::feet(18));
  CHECK(stretches[1].to == Length::feet(22));
  CHECK(stretches[1].row == Length::feet(6) + Length::inches(0, 16));
  CHECK(stretches[1].high - stretches[1].low == Length::nanometres(1'975'000 * 254 / 10) - Length::inches(0, 32));
  CHECK(stretches[1].endsAtFrom);  // of g2
  CHECK(stretches[1].endsAtTo);    // of g1
  CHECK_FALSE(stretches[0].endsAtTo);
  CHECK(wall.row("g2").stretches.size() == 1);
  CHECK_FALSE(wall.row("g2").stretches[0].endsAtFrom);
}

TEST_CASE("flush girts stop at the columns, whose flanges take the screws there") {
  Job job = wallWith({girt("g", Length::feet(6))});
  job.walls[0].girtSetting = GirtSetting::Flush;
  job.walls[0].columns.bays = {Length::feet(20), Length::feet(20)};
  job.walls[0].columns.flange = Length::inches(6);
  const ScrewedWall flush(job);
  const auto& stretches = flush.row("g").stretches;
  REQUIRE(stretches.size() == 5);  // columns at both corners and in the middle
  CHECK(stretches[2].steel == Stretch::Steel::Column);
  CHECK(stretches[2].name == "2");
  CHECK(stretches[2].from == Length::inches(237));
  CHECK(stretches[2].to == Length::inches(243));
  CHECK(stretches[1].endsAtTo);
  job.walls[0].girtSetting = GirtSetting::Bypass;
  CHECK(ScrewedWall(job).row("g").stretches.size() == 1);
}

TEST_CASE("a girt between sill and head stops at the jambs; at the sill's height it goes on") {
  Job job = wallWith({girt("low", Length::feet(3)), girt("mid", Length::feet(4, 6))});
  job.walls[0].openings = {window()};
  const ScrewedWall wall(job);
  CHECK(wall.row("low").stretches.size() == 1);
  const auto& stretches = wall.row("mid").stretches;
  REQUIRE(stretches.size() == 4);
  CHECK(stretches[1].steel == Stretch::Steel::LeftJamb);
  CHECK(stretches[1].from == Length::inches(117, 32));
  CHECK(stretches[1].to == Length::inches(120));
  CHECK(stretches[2].from == Length::inches(168));
  CHECK(stretches[3].endsAtFrom);
}

TEST_CASE("a row too near the edge of its face takes no screw") {
  Job job = wallWith({});
  // Face 0 to 2 in; 0.324 + 0.125 = 0.449 in from both.
  job.walls[0].baseAngle.row = Length::inches(0, 28);
  CHECK(ScrewedWall(job).of(HoleKind::Base).empty());
  CHECK(ScrewedWall(job).refused(Refusal::Why::OffScrewFace).size() == 40);
  job.walls[0].baseAngle.row = Length::inches(0, 29);
  CHECK(ScrewedWall(job).of(HoleKind::Base).size() == 40);
  job.walls[0].baseAngle.bend = Length::inches(0, 16);
  CHECK(ScrewedWall(job).of(HoleKind::Base).empty());
}

TEST_CASE("the base angle follows steps of the concrete, and stands on a wainscot") {
  Job job = wallWith({});
  job.walls[0].base.steps = {{Length::feet(20), -Length::inches(8)}};
  const ScrewedWall stepped(job);
  REQUIRE(stepped.holes.supports.rows[0].stretches.size() == 2);
  CHECK(stepped.holes.supports.rows[0].stretches[1].row == -Length::inches(7));
  job.walls[0].base = Base();
  job.walls[0].base.form = Base::Form::OnWall;
  job.walls[0].base.shelf = Length::feet(4);
  CHECK(ScrewedWall(job).holes.supports.rows[0].stretches[0].row == Length::feet(4, 1));
}

// 3-4-5: at 3:4 a distance of 4 in square to the slope measures 5 in upright.
TEST_CASE("a distance square to a slope, measured upright") {
  const HeightLine line({{Length(), Length()}, {Length::inches(40), Length::inches(30)}});
  CHECK(uprightMargin(Length::inches(4), line, Length(), Length::inches(40)) == Length::inches(5));
  CHECK(uprightMargin(Length::inches(4), HeightLine::level(Length()), Length(), Length::inches(40)) ==
        Length::inches(4));
  // Rounded up: 1 nm becomes 1.25 nm, so 2.
  CHECK(uprightMargin(Length::nanometres(1), line, Length(), Length::inches(40)) == Length::nanometres(2));
}
