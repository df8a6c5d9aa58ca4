#include "core/drawing/box.h"

#include <catch2/catch.hpp>

using namespace ribwright;

TEST_CASE("boxes that share an edge do not overlap") {
  CHECK_FALSE(overlap({0, 0, 10, 10}, {10, 0, 20, 10}));
  CHECK_FALSE(overlap({0, 0, 10, 10}, {0, 10, 10, 20}));
  CHECK(overlap({0, 0, 10, 10}, {9.9, 9.9, 20, 20}));
  CHECK(overlap({0, 0, 10, 10}, {4, 4, 5, 5}));
}

TEST_CASE("a line crosses a box when a part of it lies inside") {
  const Box box{10, 10, 20, 20};
  CHECK(crosses(box, {0, 15}, {30, 15}));
  CHECK(crosses(box, {15, 0}, {15, 30}));
  CHECK(crosses(box, {12, 12}, {13, 14}));
  CHECK(crosses(box, {5, 16}, {16, 5}));
  CHECK_FALSE(crosses(box, {0, 10}, {30, 10}));  // along its edge
  CHECK_FALSE(crosses(box, {0, 15}, {10, 15}));  // up to its edge
  CHECK_FALSE(crosses(box, {5, 14}, {14, 5}));   // past its corner
  CHECK_FALSE(crosses(box, {0, 25}, {30, 25}));
}

TEST_CASE("boxes unite, grow and hold one another") {
  CHECK(united({0, 0, 1, 1}, {3, -2, 4, 0}) == Box{0, -2, 4, 1});
  CHECK(Box{0, 0, 2, 2}.grown(1) == Box{-1, -1, 3, 3});
  CHECK(inside({1, 1, 2, 2}, {1, 1, 2, 2}));
  CHECK_FALSE(inside({1, 1, 2.1, 2}, {1, 1, 2, 2}));
}
