// Whether a hole lies in a piece's metal, and how near to its edges.
#include <catch2/catch.hpp>

#include "core/fastening/sheet_metal.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

// 30 in wide, 40 in high at the left, rising 3 in 4 to the right, with a window from (10, 10) to (20, 20).
struct Sheet {
  WallLayout layout;
  SheetMetal metal;
  Sheet() {
    Piece piece;
    piece.left = in(0);
    piece.right = in(32);
    piece.bottom = in(0);
    piece.top = in(64);
    piece.rings = {{{in(0), in(0)}, {in(0), in(40)}, {in(32), in(64)}, {in(32), in(0)}},
                   {{in(10), in(10)}, {in(20), in(10)}, {in(20), in(20)}, {in(10), in(20)}}};
    piece.cells = {{in(0), in(10), in(0), in(0), in(40), Length::inches(47, 32)},
                   {in(10), in(20), in(0), in(0), in(10), in(10)},
                   {in(10), in(20), in(20), in(20), Length::inches(47, 32), in(55)},
                   {in(20), in(32), in(0), in(0), in(55), in(64)}};
    layout.pieces = {piece};
    metal = sheetMetal(layout, 0);
  }
};

}  // namespace

TEST_CASE("metal: inside, in the window, outside, and on the edge") {
  const Sheet sheet;
  CHECK(sheet.metal.contains(in(5), in(5)));
  CHECK_FALSE(sheet.metal.contains(in(15), in(15)));
  CHECK_FALSE(sheet.metal.contains(in(33), in(5)));
  CHECK_FALSE(sheet.metal.contains(in(16), in(52)));  // on the slope: 40 + 16 x 3/4
  CHECK(sheet.metal.contains(in(16), in(52) - Length::nanometres(1)));
  CHECK_FALSE(sheet.metal.contains(in(0), in(5)));
}

TEST_CASE("metal: an edge is near when it is nearer than the distance, not at it") {
  const Sheet sheet;
  CHECK_FALSE(sheet.metal.isNearEdge(in(5), in(30), in(5)));
  CHECK(sheet.metal.isNearEdge(in(5) - Length::nanometres(1), in(30), in(5)));
  // Beside the window's corner: 3, 4, 5.
  CHECK_FALSE(sheet.metal.isNearEdge(in(23), in(24), in(5)));
  CHECK(sheet.metal.isNearEdge(in(23), in(24), in(5) + Length::nanometres(1)));
  // Square to the slope of 3 in 4: 5 in below it measured upright is 4 in.
  CHECK_FALSE(sheet.metal.isNearEdge(in(16), in(47), in(4)));
  CHECK(sheet.metal.isNearEdge(in(16), in(47), in(4) + Length::nanometres(1)));
}

TEST_CASE("metal: heights along an upright line, and what two lists have in common") {
  const Sheet sheet;
  std::vector<Upright> at;
  appendUprights(*sheet.metal.shape, in(15), true, at);
  CHECK(joined(at) == std::vector<Upright>{{in(0), in(10)}, {in(20), Length::inches(51, 16)}});
  CHECK(joined({{in(5), in(9)}, {in(0), in(5)}}) == std::vector<Upright>{{in(0), in(9)}});
  CHECK(common({{in(0), in(10)}}, {{in(8), in(12)}, {in(10), in(11)}}) == std::vector<Upright>{{in(8), in(10)}});
}
