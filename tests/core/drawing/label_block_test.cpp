#include "core/drawing/label_block.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {
Column upright(double left, double right, double bottom, double top) { return {left, right, bottom, bottom, top, top}; }
}  // namespace

TEST_CASE("a label finds the middle of a plain sheet at the asked height") {
  const auto spots = spotsIn({upright(0, 20, 0, 100)}, 10, 5, 40);
  REQUIRE_FALSE(spots.empty());
  CHECK(spots.front() == PaperPoint{10, -40});
}

TEST_CASE("a label keeps under a sloped top, in the middle of what is there when the asked height is not") {
  // From 0 at the left to 20 at the right over 20 mm; a label of 4 x 4 in the middle, 8 to 12, has 8 under its left
  // corner.
  const std::vector<Column> sloped{{0, 20, 0, 0, 0, 20}};
  REQUIRE_FALSE(spotsIn(sloped, 4, 4, 50).empty());
  CHECK(spotsIn(sloped, 4, 4, 50).front() == PaperPoint{10, -4});
  CHECK(spotsIn(sloped, 4, 4, 6).front() == PaperPoint{10, -6});    // its upper left corner touches the slope
  CHECK(spotsIn(sloped, 4, 4, 6.1).front() == PaperPoint{10, -4});  // it would pass it
  CHECK(spotsIn(sloped, 4, 8, 4).front() == PaperPoint{10, -4});
  CHECK(spotsIn(sloped, 4, 8.1, 4).empty());
}

TEST_CASE("a sheet notched on one side takes its label beside the notch or over it, never in it") {
  const std::vector<Column> notched{upright(0, 8, 0, 60), upright(8, 20, 40, 60)};
  for (const PaperPoint& spot : spotsIn(notched, 7, 10, 20)) {
    const double left = spot.x - 3.5, right = spot.x + 3.5, low = -spot.y - 5;
    CHECK((right <= 8 || low >= 40));
    CHECK(left >= 0);
  }
  CHECK_FALSE(spotsIn(notched, 7, 10, 20).empty());
  CHECK(spotsIn(notched, 7, 10, 20).front().x == Approx(10));  // over the notch, in the middle of the sheet
}

TEST_CASE("cells over one another are one shape where they touch") {
  const std::vector<Column> stacked{upright(0, 10, 0, 10), upright(0, 10, 10, 20)};
  CHECK(spotsIn(stacked, 8, 18, 10).size() == 1);
  const std::vector<Column> apart{upright(0, 10, 0, 10), upright(0, 10, 11, 20)};
  CHECK(spotsIn(apart, 8, 18, 10).empty());
  CHECK(spotsIn(apart, 8, 5, 10).size() == 2);
}

TEST_CASE("nothing is found where nothing fits") {
  CHECK(spotsIn({upright(0, 5, 0, 100)}, 6, 3, 50).empty());
  CHECK(spotsIn({}, 1, 1, 0).empty());
}

TEST_CASE("a drawn label fills the room that it says it takes") {
  for (const bool upward : {false, true}) {
    const LabelBlock block{{{{"A7", 3, true}}, {{"14' 8-1/2\"", 2.5, false}}}, upward};
    Sketch sketch;
    drawLabel(sketch, block, {50, 70}, -1);
    const Box box = boxAround(block, {50, 70}), drawn = sketch.bounds();
    CHECK(drawn.left == Approx(box.left));
    CHECK(drawn.right == Approx(box.right));
    CHECK(drawn.top == Approx(box.top));
    CHECK(drawn.bottom == Approx(box.bottom));
  }
}
