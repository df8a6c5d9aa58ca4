// The example that everyone tests alike: a gable end, 40 ft wide, eave 12 ft, 4:12, hold-down 0, cover 36 in, lip
// 1-1/2, leg 3/4, drop 1-3/4, flush, hung left to right, no allowance, increment 1/2 in.
#include <catch2/catch.hpp>

#include "core/layout/lay_out_wall.h"
#include "example_walls.h"

using namespace ribwright;

namespace {

WallLayout gable() {
  const Job job = examples::gable40();
  return layOutWall(job, job.walls[0]).value();
}

}  // namespace

TEST_CASE("frozen gable: 14 sheets cover 40 ft at 36 in flush") {
  const WallLayout layout = gable();
  REQUIRE(layout.pieces.size() == 14);
  CHECK(layout.runs[0].offset == Length::inches(1, 32));
  CHECK(layout.pieces.front().left == Length());
  CHECK(layout.pieces.back().right == Length::feet(40));
  CHECK(layout.pieces.front().mark == "A1");
  CHECK(layout.pieces.back().mark == "A14");
}

TEST_CASE("frozen gable: heights are taken over the metal, blanks up to the half inch") {
  const WallLayout layout = gable();
  const auto blank = [&](int sheet) { return layout.pieces.at(static_cast<std::size_t>(sheet) - 1).blankLength; };
  const auto height = [&](int sheet) {
    const Piece& piece = layout.pieces.at(static_cast<std::size_t>(sheet) - 1);
    return piece.top - piece.bottom;
  };
  CHECK(blank(1) == Length::inches(158, 32));
  CHECK(blank(6) == Length::inches(218, 32));
  CHECK(height(7) == Length::inches(225, 48));
  CHECK(blank(7) == Length::inches(226));
  CHECK(height(8) == Length::inches(221, 48));
  CHECK(blank(8) == Length::inches(222));
  CHECK(height(14) == Length::inches(149, 48));
  CHECK(blank(14) == Length::inches(150));
}

TEST_CASE("frozen gable: sheet 7 holds the ridge, sheet 14 is 12 in of metal") {
  const WallLayout layout = gable();
  CHECK(layout.pieces[6].peak == Length::feet(20));
  CHECK(layout.pieces[6].kind == PieceKind::Rake);
  CHECK(layout.pieces[13].right - layout.pieces[13].left == Length::inches(12));
  CHECK(layout.pieces[13].kind == PieceKind::Mixed);  // rip and rake
}

TEST_CASE("frozen gable: the account closes exactly") {
  const WallLayout layout = gable();
  const SheetRun& run = layout.runs[0];
  // 40 ft x (12 ft + 1-3/4 in) and a triangle of 40 ft x 6 ft 8 in.
  CHECK(run.face ==
        Length::feet(40) * Length::feet(12, 1, 48) + Area::trapezoid(Length(), Length::inches(80), Length::feet(40)));
  CHECK(run.cut == Area());
  CHECK(run.uncovered == Area());
  CHECK(run.pieces == run.net + run.laps);
}
