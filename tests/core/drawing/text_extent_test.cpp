#include "core/drawing/text_extent.h"

#include <catch2/catch.hpp>

using namespace ribwright;

// Liberation Sans has 1139 of 2048 em for each figure and capitals of 1409: capitals of 1409 mm make an em of 2048 mm.
TEST_CASE("a letter takes its advance of the font, in millimetres for capitals of the asked height") {
  CHECK(widthOf("7", 1409, false) == Approx(1139));
  CHECK(widthOf("77", 1409, false) == Approx(2 * 1139));
  CHECK(widthOf("iW", 1409, false) == Approx(455 + 1933));
  CHECK(emOf(1409) == Approx(2048));
  CHECK(emOf(2.5) == Approx(2.5 * 2048 / 1409));
}

TEST_CASE("bold letters are measured by the bold face") {
  CHECK(widthOf("A", 1409, true) == Approx(1479));
  CHECK(widthOf("A", 1409, false) == Approx(1366));
}

TEST_CASE("the marks of lengths and plans are letters of the font") {
  for (const char* mark : {"′", "″", "×", "≤", "≥", "½", "ø", "·", "–", "—", "’", "“", "”", "…", "→", "←"}) {
    INFO(mark);
    CHECK(drawnWords(mark) == mark);
  }
}

TEST_CASE("what the font has not is drawn as an open square, not dropped") {
  CHECK(drawnWords("A漢B") == "A□B");
  CHECK(drawnWords("\xF0\x9F\x8F\xA0!") == "□!");
  CHECK(widthOf("漢", 2.5, false) == Approx(widthOf("□", 2.5, false)));
}

TEST_CASE("a broken byte is one open square, and what follows it stays") {
  CHECK(drawnWords("a\xFFz") == "a□z");
  CHECK(drawnWords("a\xC3") == "a□");
  CHECK(drawnWords("\x80\x80") == "□□");
  CHECK(drawnWords("\xE2\x82Z") == "□□Z");
  CHECK(drawnWords("\xC0\xAF") == "□□");
}

TEST_CASE("a line end or tab in a name is a space") { CHECK(drawnWords("Mill\n\tRoad") == "Mill  Road"); }

TEST_CASE("the box of level text stands on its baseline by its anchor") {
  const double width = widthOf("C7", 2.5, false);
  Text text{{100, 50}, 2.5, TextAnchor::Start, 0, false, "C7", -1};
  CHECK(boxOf(text).left == Approx(100));
  CHECK(boxOf(text).right == Approx(100 + width));
  CHECK(boxOf(text).top < 50 - 2.5);
  CHECK(boxOf(text).bottom > 50);
  text.anchor = TextAnchor::Middle;
  CHECK(boxOf(text).left == Approx(100 - width / 2));
  text.anchor = TextAnchor::End;
  CHECK(boxOf(text).right == Approx(100));
  CHECK(boxOf(text).left == Approx(100 - width));
}

TEST_CASE("text turned by a quarter reads upward, its height to the left of the baseline") {
  const Text text{{100, 50}, 2.5, TextAnchor::Start, 90, false, "C7", -1};
  const Box box = boxOf(text);
  CHECK(box.bottom == Approx(50));
  CHECK(box.top == Approx(50 - widthOf(text)));
  CHECK(box.left == Approx(100 - ascentOf(2.5)));
  CHECK(box.right == Approx(100 + descentOf(2.5)));
}

// A square's diagonal: the box of text turned by 45 degrees is (width + height) / sqrt 2 each way.
TEST_CASE("text turned by any angle is boxed round its corners") {
  const Text text{{0, 0}, 2.5, TextAnchor::Start, 45, false, "A12", -1};
  const double side = (widthOf(text) + lineOf(2.5)) / std::sqrt(2.0);
  CHECK(boxOf(text).width() == Approx(side));
  CHECK(boxOf(text).height() == Approx(side));
}

TEST_CASE("text put round a middle has its box there") {
  for (const double turn : {0.0, 90.0}) {
    const Box box = boxOf(textAround({12, 34}, 3, true, turn, "B7.2"));
    CHECK(box.middle().x == Approx(12));
    CHECK(box.middle().y == Approx(34));
  }
}

TEST_CASE("words are broken at spaces, and no line is wider than asked unless it is one word") {
  const std::string words = "Cut edges are sharp and sheets are sails";
  const double width = widthOf("Cut edges are sharp", 2.5, false);
  const auto lines = wrapped(words, 2.5, false, width);
  REQUIRE(lines.size() >= 2);
  CHECK(lines.front() == "Cut edges are sharp");
  std::string all;
  for (const std::string& line : lines) {
    CHECK(widthOf(line, 2.5, false) <= width);
    all += (all.empty() ? "" : " ") + line;
  }
  CHECK(all == words);
  CHECK(wrapped("Unbreakable", 2.5, false, 1) == std::vector<std::string>{"Unbreakable"});
  CHECK(wrapped("", 2.5, false, 10).empty());
}

TEST_CASE("a text that is too long is closed with an ellipsis and fits") {
  const double room = 30;
  CHECK(shortened("short", 2.5, false, room) == "short");
  const std::string kept = shortened("Ridgefield joinery, front of the shop", 2.5, false, room);
  CHECK(kept.ends_with("…"));
  CHECK(kept.starts_with("Ridge"));
  CHECK(widthOf(kept, 2.5, false) <= room);
  CHECK(widthOf(kept, 2.5, false) > room - widthOf("W…", 2.5, false));
}
