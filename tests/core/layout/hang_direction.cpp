#include "core/layout/hang_direction.h"

#include <catch2/catch.hpp>

#include "example_walls.h"

using namespace ribwright;

namespace {

// 60 ft x 40 ft; wall A along y = 0.
struct Building60 {
  Job job = examples::freeWall(Length::feet(60));
  Building60() {
    Wall& wall = job.walls[0];
    wall.width.reset();
    wall.hang = Hang::ByRule;
    job.building.outline = {{Length(), Length()},
                            {Length::feet(60), Length()},
                            {Length::feet(60), Length::feet(40)},
                            {Length(), Length::feet(40)}};
  }
  HangDirection of(const char* letter) {
    Wall wall = job.walls[0];
    wall.letter = letter;
    return hangDirection(job, wall, wallFace(job, wall).value());
  }
  void see(Length x, Length y, int weight = 1) { job.site.sightPoints.push_back({"road", {x, y}, weight}); }
};

}  // namespace

TEST_CASE("start at the end farther from the sight point") {
  Building60 b;
  b.see(Length::feet(100), -Length::feet(50));  // off the right end of the front
  CHECK(b.of("A").hand == Hand::LeftToRight);
  CHECK(b.of("A").reason == HandReason::SightPoint);
  // From the same point wall B is seen too; its left corner is the nearer one, so it starts at its right.
  CHECK(b.of("B").hand == Hand::RightToLeft);
}

TEST_CASE("several sight points count by their weight") {
  Building60 b;
  b.see(Length::feet(100), -Length::feet(50));
  b.see(-Length::feet(40), -Length::feet(50), 3);
  CHECK(b.of("A").hand == Hand::RightToLeft);
}

TEST_CASE("a sight point inside the plan counts for nothing") {
  Building60 b;
  b.see(Length::feet(50), Length::feet(10));
  CHECK(b.of("A").reason == HandReason::Default);
  CHECK(insideOutline(b.job.building.outline, {Length::feet(60), Length::feet(10)}));
  CHECK_FALSE(insideOutline(b.job.building.outline, {Length::feet(61), Length::feet(10)}));
}

// NAVEDTRA 14251 ch. 8: start at the end toward which the prevailing wind blows.
TEST_CASE("a wall that faces away goes by the wind") {
  Building60 b;
  b.see(Length::feet(100), -Length::feet(50));
  b.job.site.windFrom = Angle::degrees(270);  // from the west: blows toward the east
  // Seen from outside, wall C has the east at its left.
  CHECK(b.of("C").hand == Hand::LeftToRight);
  CHECK(b.of("C").reason == HandReason::Wind);
}

TEST_CASE("within 1 % of the wall's width a sight point is a tie, and the wind decides") {
  Building60 b;
  b.see(Length::feet(30), -Length::feet(50));
  b.job.site.windFrom = Angle::degrees(270);
  CHECK(b.of("A").hand == Hand::RightToLeft);
  CHECK(b.of("A").reason == HandReason::Wind);
  b.see(Length::feet(31), -Length::feet(50));  // two points, half a foot off on average: 0.9 %
  CHECK(b.of("A").reason == HandReason::Wind);
  b.job.site.sightPoints.back().at.x = Length::feet(33);
  CHECK(b.of("A").reason == HandReason::SightPoint);
}

TEST_CASE("a wind square to the wall is no wind; then left to right") {
  Building60 b;
  b.job.site.windFrom = Angle::degrees(180);
  CHECK(b.of("A").hand == Hand::LeftToRight);
  CHECK(b.of("A").reason == HandReason::Default);
}

TEST_CASE("true north turns the wind") {
  Building60 b;
  b.job.site.windFrom = Angle::degrees(180);
  b.job.site.trueNorth = Angle::degrees(90);  // true north lies east of the plan: a south wind blows toward +x
  CHECK(b.of("A").hand == Hand::RightToLeft);
}

TEST_CASE("a typed hand stands, and says so when the rule would differ") {
  Building60 b;
  b.see(Length::feet(100), -Length::feet(50));
  b.job.walls[0].hang = Hang::RightToLeft;
  CHECK(b.of("A").hand == Hand::RightToLeft);
  CHECK(b.of("A").againstRule);
  b.job.walls[0].hang = Hang::LeftToRight;
  CHECK_FALSE(b.of("A").againstRule);
}
