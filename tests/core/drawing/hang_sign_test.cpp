// Which sheet laps outside, and the sign of a girt's flange.
#include "core/drawing/hang_sign.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/drawing/height_column.h"
#include "tests/core/drawing/page_reading.h"

using namespace ribwright;

namespace {

struct HungView {
  Wall wall;
  WallLayout layout;
  WallView view;
  explicit HungView(Hand hand) {
    layout.sheeted = true;
    layout.direction.hand = hand;
    layout.face.width = Length::feet(40);
    view.wall = &wall;
    view.layout = &layout;
    view.words = &Words::of("en");
    view.scale.below = 96;
    view.to = layout.face.width;
  }
  // The two lines of the section: the heavier one is the sheet outside.
  std::vector<Stroke> lap() const {
    Sketch sketch;
    drawHangSign(sketch, view, 0);
    auto strokes = strokesOf({PaperSize::Letter, "A", "", sketch.drawing});
    REQUIRE(strokes.size() == 3);
    strokes.erase(strokes.begin());  // the arrow's shaft
    std::sort(strokes.begin(), strokes.end(),
              [](const Stroke& a, const Stroke& b) { return a.width.size < b.width.size; });
    return strokes;
  }
};

double middleOf(const Stroke& stroke) { return (stroke.points[0].x + stroke.points[1].x) / 2; }

}  // namespace

TEST_CASE("the later sheet lies outside and farther along the hanging direction, over part of the earlier one") {
  for (const Hand hand : {Hand::LeftToRight, Hand::RightToLeft}) {
    const auto lap = HungView(hand).lap();
    CHECK(lap[1].points[0].y > lap[0].points[0].y);  // the outside is below, as seen from above
    CHECK((middleOf(lap[1]) > middleOf(lap[0])) == (hand == Hand::LeftToRight));
    const auto ends = [](const Stroke& s) { return std::minmax(s.points[0].x, s.points[1].x); };
    CHECK(std::max(ends(lap[0]).first, ends(lap[1]).first) < std::min(ends(lap[0]).second, ends(lap[1]).second));
  }
}

TEST_CASE("a girt's sign turns its flange up or down from the web, at the sheet's side") {
  const auto up = flangeRing(Girt::Flange::Up, {0, 0}), down = flangeRing(Girt::Flange::Down, {0, 0});
  const auto tall = [](const std::vector<PaperPoint>& ring) {
    double low = -9, high = 9;
    for (const PaperPoint& point : ring) {
      if (point.x < 0.4) continue;  // the flange is at the right
      low = std::max(low, point.y);
      high = std::min(high, point.y);
    }
    return std::pair(high, low);
  };
  const auto web = [](const std::vector<PaperPoint>& ring) { return ring.front().y; };
  CHECK(web(up) > 0.5);
  CHECK(tall(up).first == Approx(-flangeReach));
  CHECK(web(down) < -0.5);
  CHECK(tall(down).second == Approx(flangeReach));
}
