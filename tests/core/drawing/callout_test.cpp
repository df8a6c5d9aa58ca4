#include "core/drawing/callout.h"

#include <catch2/catch.hpp>

#include "core/drawing/face_picture.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/page_faults.h"

using namespace ribwright;

namespace {

// The frozen gable at 1/8 in to the foot: 127 mm wide, 38 mm at the eaves, 59 mm at the ridge; its outline is drawn.
struct Gable {
  DrawnJob drawn = planned("frozen gable", frozenGable());
  WallView view;
  Sketch sketch;

  Gable() {
    view.wall = &drawn.job.walls.front();
    view.layout = &drawn.plan.walls.front()->layout;
    view.words = &Words::of("en");
    view.scale = {96};
    view.to = Length::feet(40);
    drawFace(sketch, view);
  }

  Page page() const {
    Page made;
    made.drawing = sketch.drawing;
    return made;
  }
};

LabelBlock label(const std::string& words) { return {{{{words, 2.5, true}}}, false}; }

Callout callout(const std::string& words, double x, double y) {
  return {{label(words), label("x")}, {{x, y}}, true, -1};
}

Box boxSaying(const Page& page, const std::string& words) {
  for (const Text& text : textsOf(page)) {
    if (text.words == words) return boxOf(text);
  }
  FAIL(words << " is not on the page");
  return {};
}

}  // namespace

TEST_CASE("a callout stands straight above or below what it names, whichever is nearer, and outside the wall") {
  Gable gable;
  CHECK(drawCallouts(gable.sketch, gable.view, {callout("upper", 30, -42), callout("lower", 90, -4)}).empty());
  const Box upper = boxSaying(gable.page(), "upper"), lower = boxSaying(gable.page(), "lower");
  CHECK(upper.left <= 30);
  CHECK(upper.right >= 30);
  CHECK(upper.bottom < -48);  // the rake at x = 30 is 38.1 + 30 / 3 mm up
  CHECK(lower.left <= 90);
  CHECK(lower.right >= 90);
  CHECK(lower.top > 0.46);  // sheets end 1-3/4 in under the concrete
}

TEST_CASE("a callout's line goes round a text in its way, or comes out on the other side") {
  Gable gable;
  gable.sketch.text(textAround({30, -53}, 2.5, false, 0, "way"));
  CHECK(drawCallouts(gable.sketch, gable.view, {callout("named", 30, -44)}).empty());
  const Page page = gable.page();
  CHECK(textsTooNear(page).empty());
  CHECK(textsStruckThrough(page).empty());
  CHECK_FALSE(overlap(boxSaying(page, "named"), {27, -1000, 33, 0}));  // not straight above
}

TEST_CASE("a callout whose both ways out are shut by texts is given back and nothing is drawn of it") {
  Gable gable;
  gable.sketch.text(textAround({30, -47}, 2.5, false, 0, "shut above"));
  gable.sketch.text(textAround({30, -3}, 2.5, false, 0, "shut below"));
  const std::size_t items = gable.sketch.drawing.items.size();
  CHECK(drawCallouts(gable.sketch, gable.view, {callout("named", 30, -20)}).size() == 1);
  CHECK(gable.sketch.drawing.items.size() == items);
}

TEST_CASE("a crowd of callouts says less, so that each stands near its place, and no two lines run together") {
  Gable gable;
  std::vector<Callout> crowd;
  for (int i = 0; i < 9; ++i) crowd.push_back(callout("a long name number " + std::to_string(i), 50 + 3.0 * i, -3));
  CHECK(drawCallouts(gable.sketch, gable.view, crowd).empty());
  const Page page = gable.page();
  CHECK(textsTooNear(page).empty());
  CHECK(textsStruckThrough(page).empty());
  CHECK(timesSaid(page, "x") > 4);
}

TEST_CASE("lines of callouts never cross, even where places are taken in an awkward order") {
  Gable gable;
  std::vector<Callout> crowd;
  for (const double x : {60.0, 40.0, 52.0, 44.0, 56.0, 48.0, 50.0, 46.0, 54.0, 42.0, 58.0}) {
    crowd.push_back({{label("a name of some length")}, {{x, -3}}, true, -1});
  }
  drawCallouts(gable.sketch, gable.view, crowd);
  std::vector<Stroke> lines;
  for (const Stroke& stroke : strokesOf(gable.page())) {
    if (stroke.part < 0 && stroke.points.size() == 3) lines.push_back(stroke);
  }
  CHECK(lines.size() > 3);
  const auto side = [](const PaperPoint& a, const PaperPoint& b, const PaperPoint& p) {
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
  };
  for (std::size_t i = 0; i < lines.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      for (std::size_t k = 0; k < 4; ++k) {
        const PaperPoint &a = lines[i].points[k / 2u], &b = lines[i].points[k / 2u + 1];
        const PaperPoint &c = lines[j].points[k % 2u], &d = lines[j].points[k % 2u + 1];
        CHECK_FALSE((side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0));
      }
    }
  }
}
