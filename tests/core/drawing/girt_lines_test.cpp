// Rows of girts: a wall 24 ft wide under a gable from 8 ft at the corners to 12 ft in the middle, drawn at 1:48.
#include "core/drawing/girt_lines.h"

#include <catch2/catch.hpp>

#include "core/drawing/text_extent.h"

using namespace ribwright;

namespace {

struct GableView {
  Wall wall;
  WallLayout layout;
  WallHoles holes;
  WallView view;
  GableView() {
    const Length width = Length::feet(24);
    layout.face.width = width;
    layout.face.top =
        HeightLine({{Length(), Length::feet(8)}, {Length::feet(12), Length::feet(12)}, {width, Length::feet(8)}});
    layout.face.steel = layout.face.top;
    layout.face.bottom = layout.face.concrete = HeightLine::level(Length());
    view.wall = &wall;
    view.layout = &layout;
    view.holes = &holes;
    view.words = &Words::of("en");
    view.scale.below = 48;
    view.to = width;
  }
  double x(Length u) const { return view.x(u); }
  void add(const std::string& name, Length z, Length from, Length to) {
    SupportRow row;
    row.id = name;
    Stretch stretch;
    stretch.name = name;
    stretch.from = from;
    stretch.to = to;
    stretch.row = z;
    row.stretches = {stretch};
    holes.supports.rows.push_back(row);
  }
};

std::vector<Stroke> strokes(const Sketch& sketch, Dash dash) {
  std::vector<Stroke> found;
  for (const Item& item : sketch.drawing.items) {
    const Stroke* stroke = std::get_if<Stroke>(&item);
    if (stroke && stroke->dash == dash) found.push_back(*stroke);
  }
  return found;
}

std::vector<Text> texts(const Sketch& sketch) {
  std::vector<Text> found;
  for (const Item& item : sketch.drawing.items) {
    if (const Text* text = std::get_if<Text>(&item)) found.push_back(*text);
  }
  return found;
}

}  // namespace

TEST_CASE("a girt's row is a dashed line at its height, from end to end of its steel") {
  GableView gable;
  gable.add("g1", Length::feet(4), Length::feet(2), Length::feet(20));
  Sketch sketch;
  drawGirtLines(sketch, gable.view);
  const auto lines = strokes(sketch, Dash::Dashed);
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].points.front().x == Approx(gable.x(Length::feet(2))));
  CHECK(lines[0].points.back().x == Approx(gable.x(Length::feet(20))));
  CHECK(lines[0].points.front().y == Approx(gable.view.y(Length::feet(4))));
}

// At 10 ft, half way up the gable, the wall reaches from 6 ft to 18 ft.
TEST_CASE("a girt under a gable is drawn only where the wall is") {
  GableView gable;
  gable.add("g3", Length::feet(10), Length(), Length::feet(24));
  gable.add("g4", Length::feet(13), Length(), Length::feet(24));
  const auto parts = partsInFace(gable.view, Length::feet(10), Length(), Length::feet(24));
  REQUIRE(parts.size() == 1);
  CHECK(parts[0].from == Approx(gable.x(Length::feet(6))));
  CHECK(parts[0].to == Approx(gable.x(Length::feet(18))));
  Sketch sketch;
  drawGirtLines(sketch, gable.view);
  CHECK(strokes(sketch, Dash::Dashed).size() == 1);
}

TEST_CASE("where the bottom steps above a girt the wall is not") {
  GableView gable;
  gable.layout.face.bottom = HeightLine({{Length(), Length()},
                                         {Length::feet(8), Length()},
                                         {Length::feet(8), Length::feet(5)},
                                         {Length::feet(24), Length::feet(5)}});
  const auto parts = partsInFace(gable.view, Length::feet(4), Length(), Length::feet(24));
  REQUIRE(parts.size() == 1);
  CHECK(parts[0].from == Approx(0));
  CHECK(parts[0].to == Approx(gable.x(Length::feet(8))));
}

TEST_CASE("a girt's line stops at words and goes on behind them") {
  GableView gable;
  gable.add("g1", Length::feet(4), Length(), Length::feet(24));
  Sketch sketch;
  const double y = gable.view.y(Length::feet(4));
  sketch.text({{60, y + 1}, 2.5, TextAnchor::Start, 0, true, "A7", -1});
  const Box words = boxOf(texts(sketch)[0]);
  drawGirtLines(sketch, gable.view);
  const auto lines = strokes(sketch, Dash::Dashed);
  REQUIRE(lines.size() == 2);
  CHECK(lines[0].points.back().x < words.left);
  CHECK(lines[1].points.front().x > words.right);
  CHECK(lines[0].points.back().x > words.left - 1);
}

TEST_CASE("steel of columns and jambs, and rows of other supports, are not drawn as girts") {
  GableView gable;
  gable.add("g1", Length::feet(4), Length(), Length::feet(24));
  gable.holes.supports.rows[0].stretches[0].steel = Stretch::Steel::Column;
  gable.add("W1", Length::feet(5), Length(), Length::feet(24));
  gable.holes.supports.rows[1].kind = SupportKind::Head;
  Sketch sketch;
  drawGirtLines(sketch, gable.view);
  CHECK(sketch.drawing.items.empty());
  CHECK(rowHeights(gable.view).empty());
  CHECK(roomForRowHeights(gable.view) == 0);
}

TEST_CASE("each height of each girt is named once, from the lowest, and only where it is seen") {
  GableView gable;
  gable.add("g2", Length::feet(7, 4), Length(), Length::feet(24));
  gable.add("g1", Length::feet(3, 6), Length(), Length::feet(10));
  gable.add("g1", Length::feet(3, 6), Length::feet(12), Length::feet(24));
  gable.add("g1+g2", Length::feet(5), Length::feet(10), Length::feet(12));
  gable.add("g9", Length::feet(20), Length(), Length::feet(24));
  std::vector<std::string> words;
  for (const HeightLabel& row : rowHeights(gable.view)) words.push_back(row.words);
  CHECK(words == std::vector<std::string>{"g1 3' 6\"", "g1+g2 5' 0\"", "g2 7' 4\""});
}

TEST_CASE("heights stand in a column left of the wall, each with a line to its row") {
  GableView gable;
  gable.add("g1", Length::feet(3, 6), Length(), Length::feet(24));
  gable.add("g2", Length::feet(7, 4), Length(), Length::feet(24));
  Sketch sketch;
  CHECK(drawRowHeights(sketch, gable.view) == 0);
  const auto all = texts(sketch);
  const auto lines = strokes(sketch, Dash::Solid);
  REQUIRE(all.size() == 2);
  REQUIRE(lines.size() == 2);
  const double room = roomForRowHeights(gable.view);
  for (std::size_t i = 0; i < 2; ++i) {
    const Box box = boxOf(all[i]);
    CHECK(box.right < 0);
    CHECK(box.left >= -room - 1e-9);
    CHECK(lines[i].points.front().y == Approx(box.middle().y));
    CHECK(lines[i].points.back().x < 0);
  }
  CHECK(lines[0].points.back().y == Approx(gable.view.y(Length::feet(7, 4))));
  CHECK(lines[1].points.back().y == Approx(gable.view.y(Length::feet(3, 6))));
}

// 10 ft is over the corner's 8 ft: the line goes on to where the rake crosses it, 6 ft from the corner.
TEST_CASE("the line to a row high in a gable reaches to the wall") {
  GableView gable;
  gable.add("g3", Length::feet(10), Length(), Length::feet(24));
  Sketch sketch;
  CHECK(drawRowHeights(sketch, gable.view) == 0);
  const auto lines = strokes(sketch, Dash::Solid);
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].points.back().x == Approx(gable.x(Length::feet(6))).margin(1));
}

// 12 ft at 1:48 is 76 mm on paper: room for some twenty heights of 3.4 mm, not for 47.
TEST_CASE("of more rows than have room every second, third ... is named, and the others are counted") {
  GableView gable;
  for (int i = 1; i < 48; ++i) gable.add("g" + std::to_string(i), Length::inches(3 * i), Length(), Length::feet(24));
  REQUIRE(rowHeights(gable.view).size() == 47);
  Sketch sketch;
  const int left = drawRowHeights(sketch, gable.view);
  CHECK(left > 20);
  CHECK(static_cast<int>(texts(sketch).size()) == 47 - left);
  CHECK(texts(sketch).size() > 10);
}

TEST_CASE("a long name of a girt is closed with an ellipsis") {
  GableView gable;
  gable.add("the girt over the loading dock's canopy", Length::feet(4), Length(), Length::feet(24));
  const std::string words = rowHeights(gable.view).at(0).words;
  CHECK(words.find("… 4' 0\"") != std::string::npos);
  CHECK(roomForRowHeights(gable.view) < 45);
}

TEST_CASE("a view without holes has no rows") {
  GableView gable;
  gable.view.holes = nullptr;
  Sketch sketch;
  drawGirtLines(sketch, gable.view);
  CHECK(drawRowHeights(sketch, gable.view) == 0);
  CHECK(sketch.drawing.items.empty());
}
