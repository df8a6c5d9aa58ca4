#include "core/layout/height_line.h"

#include <catch2/catch.hpp>

using namespace ribwright;

namespace {

Length nm(std::int64_t count) { return Length::nanometres(count); }

}  // namespace

TEST_CASE("a level line is level everywhere") {
  const HeightLine line = HeightLine::level(Length::feet(12));
  CHECK(line.heightAt(Length(), Beside::Left) == Length::feet(12));
  CHECK(line.heightAt(Length::feet(500), Beside::Right) == Length::feet(12));
  CHECK(line.isLevelAt(Length::feet(3), Beside::Right));
}

TEST_CASE("4:12 rises a foot in three") {
  const HeightLine line(
      {{Length(), Length::feet(12)}, {Length::feet(20), Length::feet(18, 8)}, {Length::feet(40), Length::feet(12)}});
  CHECK(line.heightAt(Length::feet(3), Beside::Right) == Length::feet(13));
  CHECK(line.heightAt(Length::feet(20), Beside::Left) == Length::feet(18, 8));
  CHECK(line.heightAt(Length::feet(37), Beside::Right) == Length::feet(13));
  CHECK(line.highest(Length(), Length::feet(40)) == Length::feet(18, 8));
  CHECK(line.lowest(Length::feet(3), Length::feet(38)) == Length::feet(12, 8));
}

TEST_CASE("beyond its ends a line goes straight on") {
  const HeightLine line({{Length(), Length::feet(12)}, {Length::feet(30), Length::feet(22)}});
  CHECK(line.heightAt(-Length::inches(3), Beside::Right) == Length::feet(11, 11));
  CHECK(line.heightAt(Length::feet(33), Beside::Left) == Length::feet(23));
}

// ASTM E29 section 6: a tie goes to the even neighbour.
TEST_CASE("a sloped height is rounded half to even, from the segment's lower end") {
  const HeightLine line({{nm(0), nm(100)}, {nm(2), nm(103)}});
  CHECK(line.heightAt(nm(1), Beside::Right) == nm(102));  // 1.5 up: even is 2
  const HeightLine other({{nm(0), nm(100)}, {nm(2), nm(101)}});
  CHECK(other.heightAt(nm(1), Beside::Right) == nm(100));  // 0.5 up: even is 0
}

TEST_CASE("mirrored heights are the heights, also on ties with an odd rise") {
  const HeightLine line({{nm(0), nm(100)}, {nm(10), nm(105)}, {nm(16), nm(100)}, {nm(16), nm(90)}, {nm(20), nm(91)}});
  const HeightLine mirror = line.mirrored(nm(20));
  for (std::int64_t u = 0; u <= 20; ++u) {
    CHECK(line.heightAt(nm(u), Beside::Left) == mirror.heightAt(nm(20 - u), Beside::Right));
    CHECK(line.heightAt(nm(u), Beside::Right) == mirror.heightAt(nm(20 - u), Beside::Left));
  }
}

TEST_CASE("a step has a height on each side") {
  const HeightLine parapet({{Length(), Length::feet(14)},
                            {Length::feet(10), Length::feet(14)},
                            {Length::feet(10), Length::feet(16)},
                            {Length::feet(30), Length::feet(16)}});
  CHECK(parapet.heightAt(Length::feet(10), Beside::Left) == Length::feet(14));
  CHECK(parapet.heightAt(Length::feet(10), Beside::Right) == Length::feet(16));
  CHECK(parapet.lowest(Length::feet(10), Length::feet(12)) == Length::feet(16));
}

TEST_CASE("a line raised keeps its rounding") {
  const HeightLine line({{nm(0), nm(0)}, {nm(7), nm(3)}});
  for (std::int64_t u = 0; u <= 7; ++u) {
    CHECK(line.raised(nm(1)).heightAt(nm(u), Beside::Left) == line.heightAt(nm(u), Beside::Left) + nm(1));
  }
}

TEST_CASE("a line that turns back is refused") {
  CHECK_THROWS_AS(HeightLine({{nm(5), nm(0)}, {nm(4), nm(0)}}), std::invalid_argument);
  CHECK_THROWS_AS(HeightLine(std::vector<FaceVertex>{}), std::invalid_argument);
}
