// Columns on an elevation: a wall 60 ft wide with columns 6 in from its corners and bays of 20 ft, 19 ft and 20 ft.
#include "core/drawing/column_marks.h"

#include <catch2/catch.hpp>

#include "core/drawing/wall_chains.h"
#include "tests/core/drawing/page_reading.h"

using namespace ribwright;

namespace {

struct ColumnView {
  Wall wall;
  WallLayout layout;
  WallView view;
  ColumnView() {
    wall.columns.offset = Length::inches(6);
    wall.columns.bays = {Length::feet(20), Length::feet(19), Length::feet(20)};
    layout.face.width = Length::feet(60);
    layout.face.top = layout.face.steel = HeightLine::level(Length::feet(12));
    layout.face.bottom = layout.face.concrete = HeightLine::level(Length());
    view.wall = &wall;
    view.layout = &layout;
    view.words = &Words::of("en");
    view.scale.below = 96;
    view.to = layout.face.width;
  }
};

Page pageOf(const Sketch& sketch) { return {PaperSize::Letter, "A", "", sketch.drawing}; }

std::vector<std::string> wordsOn(const Sketch& sketch) {
  std::vector<std::string> words;
  for (const Text& text : textsOf(pageOf(sketch))) words.push_back(text.words);
  return words;
}

}  // namespace

TEST_CASE("columns are counted from the left corner, and those beyond the wall are none of its own") {
  ColumnView drawn;
  drawn.wall.columns.offset = -Length::inches(6);
  const auto places = columnPlaces(drawn.wall, Length::feet(60));
  REQUIRE(places.size() == 3);
  CHECK(places[0].number == 2);
  CHECK(places[0].u == Length::feet(19, 6));
  CHECK(places[2].number == 4);
  CHECK(places[2].u == Length::feet(58, 6));
}

TEST_CASE("a wall whose bays are not stated has no columns") {
  ColumnView drawn;
  drawn.wall.columns.bays.clear();
  CHECK(columnsSeen(drawn.view).empty());
  CHECK_FALSE(nearestColumn(drawn.wall, Length::feet(60), Length::feet(3)));
  CHECK(roomForColumnMarks(drawn.view) == 0);
}

// Columns 1 and 2 stand at 6 in and 20 ft 6 in: half way is 10 ft 6 in.
TEST_CASE("a jamb is measured from the nearer column, half way from the left one") {
  ColumnView drawn;
  const auto nearest = [&](Length u) { return nearestColumn(drawn.wall, Length::feet(60), u).value().number; };
  CHECK(nearest(Length::feet(10, 6)) == 1);
  CHECK(nearest(Length::feet(10, 7)) == 2);
  CHECK(nearest(Length()) == 1);
  CHECK(nearest(Length::feet(60)) == 4);
}

TEST_CASE("each column's number stands in a frame under it, clear of the lines to the dimensions") {
  ColumnView drawn;
  Sketch sketch;
  CHECK(drawColumnMarks(sketch, drawn.view, 0, witnessLines(drawn.view)) == 0);
  const Page page = pageOf(sketch);
  const auto texts = textsOf(page);
  REQUIRE(texts.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(texts[i].words == std::to_string(i + 1));
    const Box box = boxOf(texts[i]);
    const double column = drawn.view.x(columnPlaces(drawn.wall, Length::feet(60))[i].u);
    CHECK(box.middle().x == Approx(column).margin(4));
    for (const double line : witnessLines(drawn.view)) CHECK((box.right < line || box.left > line));
    CHECK(box.bottom < roomForColumnMarks(drawn.view));
  }
}

// A column every 2 in along 60 ft: their numbers would be 0.5 mm apart.
TEST_CASE("of more columns than have room every second, third ... is numbered, and the others are counted") {
  ColumnView drawn;
  drawn.wall.columns.bays.assign(350, Length::inches(2));
  Sketch sketch;
  const int left = drawColumnMarks(sketch, drawn.view, 0, witnessLines(drawn.view));
  CHECK(left > 250);
  CHECK(static_cast<int>(wordsOn(sketch).size()) == 351 - left);
}

TEST_CASE("the chain of bays runs from corner to corner through the columns, over the chain of the whole") {
  ColumnView drawn;
  Sketch sketch;
  CHECK(drawWallChains(sketch, drawn.view, 0) == 0);
  const auto words = wordsOn(sketch);
  for (const char* figure : {"20' 0\"", "19' 0\"", "60' 0\""})
    CHECK(std::find(words.begin(), words.end(), figure) != words.end());
  CHECK(std::count(words.begin(), words.end(), "6\"") == 2);
}
