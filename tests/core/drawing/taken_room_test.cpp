#include "core/drawing/taken_room.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

// Two words of 10 mm by 4 mm: at x = 20 to 30 and x = 60 to 70, both over y = 10.
TakenRoom twoWords() {
  TakenRoom room;
  room.takeText({20, 8, 30, 12});
  room.takeText({60, 8, 70, 12});
  return room;
}

std::vector<double> xs(const std::vector<std::pair<PaperPoint, PaperPoint>>& parts) {
  std::vector<double> all;
  for (const auto& [a, b] : parts) {
    all.push_back(a.x);
    all.push_back(b.x);
  }
  return all;
}

void near(const std::vector<double>& found, const std::vector<double>& wanted) {
  REQUIRE(found.size() == wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) CHECK(found[i] == Approx(wanted[i]));
}

}  // namespace

TEST_CASE("a level line through two words is left in three parts") {
  near(xs(twoWords().clearParts({0, 10}, {100, 10}, 0.5)), {0, 19.5, 30.5, 59.5, 70.5, 100});
}

TEST_CASE("a line keeps its direction") {
  near(xs(twoWords().clearParts({100, 10}, {0, 10}, 0.5)), {100, 70.5, 59.5, 30.5, 19.5, 0});
}

TEST_CASE("a line past all words is left whole") {
  near(xs(twoWords().clearParts({0, 12.6}, {100, 12.6}, 0.5)), {0, 100});
  near(xs(twoWords().clearParts({45, 0}, {45, 40}, 0.5)), {45, 45});
  CHECK(TakenRoom().clearParts({0, 0}, {10, 0}, 1).size() == 1);
}

TEST_CASE("a line that begins or ends in a word is cut there, and one within a word is gone") {
  near(xs(twoWords().clearParts({25, 10}, {65, 10}, 0.5)), {30.5, 59.5});
  CHECK(twoWords().clearParts({22, 10}, {28, 10}, 0.5).empty());
}

TEST_CASE("words that overlap along a line are one gap") {
  TakenRoom room = twoWords();
  room.takeText({28, 9, 61, 11});
  near(xs(room.clearParts({0, 10}, {100, 10}, 0)), {0, 20, 70, 100});
}

// From (0, 0) to (40, 20) the line is within y = 8 to 12 between x = 16 and x = 24; the word begins at x = 20.
TEST_CASE("a slanting line is cut where it runs through the word") {
  TakenRoom room;
  room.takeText({20, 8, 30, 12});
  near(xs(room.clearParts({0, 0}, {40, 20}, 0)), {0, 20, 24, 40});
}
