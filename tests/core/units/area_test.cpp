#include "core/units/area.h"

#include <catch2/catch.hpp>
#include <type_traits>

#include "tests/core/units/nanometres.h"

namespace ribwright {
namespace {

// 28 ft by 330 ft, a long wall: its square nanometres are 86 times what 64 bits hold.
TEST_CASE("areas are exact far beyond 3 m by 3 m") {
  const Area wall = Length::feet(330) * Length::feet(28);
  const Int128 squareFoot = Int128(304'800'000) * 304'800'000;
  CHECK(wall.halfSquareNanometres() == squareFoot * 9240 * 2);
  CHECK(wall.halfSquareNanometres() > Int128(INT64_MAX));
  CHECK(wall.inSquareFeet() == Approx(9240));
  CHECK(wall.inSquareMetres() == Approx(9240 * 0.09290304));
}

TEST_CASE("the edge of 64 bits at 3.037 m is not an edge") {
  const Length side = nm(3'037'000'500);  // the first whose square leaves 64 bits
  CHECK((side * side).halfSquareNanometres() == Int128(side.nanometres()) * side.nanometres() * 2);
  CHECK((side * side - side * (side - nm(1))).halfSquareNanometres() == Int128(side.nanometres()) * 2);
}

TEST_CASE("any two lengths have an area") {
  const Length most = nm(INT64_MAX);
  CHECK((most * most).halfSquareNanometres() == Int128(INT64_MAX) * INT64_MAX * 2);
  CHECK((most * -most).halfSquareNanometres() == -(Int128(INT64_MAX) * INT64_MAX * 2));
}

TEST_CASE("a trapezoid with whole corners has a whole count of half square nanometres") {
  CHECK(Area::trapezoid(nm(1), nm(2), nm(1)).halfSquareNanometres() == 3);
  CHECK(Area::trapezoid(Length::feet(12), Length::feet(13), Length::feet(3)) == Length::inches(150) * Length::feet(3));
}

TEST_CASE("cutting a trapezoid anywhere keeps its area") {
  // 12 ft at the eave, rising 4 in 12 over 3 ft, cut at 1 ft where it is 12 ft 4 in high.
  const Area whole = Area::trapezoid(Length::feet(12), Length::feet(13), Length::feet(3));
  const Area left = Area::trapezoid(Length::feet(12), Length::feet(12, 4), Length::feet(1));
  const Area right = Area::trapezoid(Length::feet(12, 4), Length::feet(13), Length::feet(2));
  CHECK(left + right == whole);
  CHECK(whole - left == right);
}

TEST_CASE("areas add up, count and compare") {
  const Area sheet = Length::inches(36) * Length::feet(12);
  Area total;
  for (int i = 0; i < 14; ++i) total += sheet;
  CHECK(total == sheet * 14);
  CHECK(total > sheet);
  CHECK((sheet - total) < Area());
  CHECK_FALSE(std::is_convertible_v<Length, Area>);
  CHECK_FALSE(std::is_convertible_v<Area, Length>);
}

}  // namespace
}  // namespace ribwright
