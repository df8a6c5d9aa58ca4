#include "core/units/length.h"

#include <catch2/catch.hpp>
#include <type_traits>

#include "tests/core/units/nanometres.h"

namespace ribwright {
namespace {

constexpr std::int64_t kMost = INT64_MAX;
constexpr std::int64_t kLeast = INT64_MIN;

// The trade's rules: exact integer nanometres inside.
TEST_CASE("one sixty-fourth of an inch and one millionth of a millimetre are whole") {
  CHECK(Length::sixtyFourths(1).nanometres() == 396'875);
  CHECK(Length::sixtyFourths(64) == Length::inches(1));
  CHECK(Length::inches(12) == Length::feet(1));
  CHECK(Length::millimetres(1).nanometres() == 1'000'000);
  CHECK(Length::feet(12, 3, 32) == Length::inches(147) + Length::sixtyFourths(32));
  CHECK(Length::feet(-1) == -Length::feet(1));
}

// The house's manner: Length explicit only; length x length is an Area.
TEST_CASE("a length never comes from a bare number and never from length times length") {
  CHECK_FALSE(std::is_convertible_v<int, Length>);
  CHECK_FALSE(std::is_convertible_v<double, Length>);
  CHECK_FALSE(std::is_convertible_v<std::int64_t, Length>);
  CHECK_FALSE(std::is_constructible_v<Length, std::int64_t>);
  CHECK_FALSE(std::is_convertible_v<Length, std::int64_t>);
  CHECK_FALSE(std::is_convertible_v<Length, double>);
}

TEST_CASE("sums, differences and multiples are exact up to the ends of the range") {
  CHECK(nm(kMost - 1) + nm(1) == nm(kMost));
  CHECK(nm(kLeast + 1) - nm(1) == nm(kLeast));
  CHECK(nm(kMost) + nm(kLeast) == nm(-1));
  CHECK(nm(kMost / 3) * 3 == nm(kMost / 3 * 3));
  CHECK(-nm(kMost) == nm(kLeast + 1));
  CHECK(3 * Length::inches(36) == Length::feet(9));
}

TEST_CASE("leaving the range is thrown, never wrapped") {
  CHECK_THROWS_AS(nm(kMost) + nm(1), std::overflow_error);
  CHECK_THROWS_AS(nm(kLeast) + nm(-1), std::overflow_error);
  CHECK_THROWS_AS(nm(kLeast) - nm(1), std::overflow_error);
  CHECK_THROWS_AS(nm(0) - nm(kLeast), std::overflow_error);
  CHECK_THROWS_AS(nm(kMost) * 2, std::overflow_error);
  CHECK_THROWS_AS(-1 * nm(kLeast), std::overflow_error);
  CHECK_THROWS_AS(-nm(kLeast), std::overflow_error);
  CHECK_THROWS_AS(Length::feet(kMost / 304'800'000 + 1), std::overflow_error);
  CHECK_THROWS_AS(Length::millimetres(kMost), std::overflow_error);
  Length most = nm(kMost);
  CHECK_THROWS_AS(most += nm(1), std::overflow_error);
  CHECK(most == nm(kMost));
}

TEST_CASE("whole times and the rest: 41 ft hold 13 covers of 36 in and leave 2 ft") {
  const Length cover = Length::inches(36);
  CHECK(wholeTimes(Length::feet(41), cover) == 13);
  CHECK(rest(Length::feet(41), cover) == Length::feet(2));
  CHECK(wholeTimes(Length::feet(42), cover) == 14);
  CHECK(rest(Length::feet(42), cover) == Length());
}

TEST_CASE("below zero the whole times fall and the rest stays within the part") {
  CHECK(wholeTimes(nm(-1), nm(10)) == -1);
  CHECK(rest(nm(-1), nm(10)) == nm(9));
  CHECK(wholeTimes(nm(-10), nm(10)) == -1);
  CHECK(rest(nm(-10), nm(10)) == nm(0));
  for (std::int64_t whole = -50; whole <= 50; ++whole)
    for (std::int64_t part = 1; part <= 7; ++part) {
      const Length left = rest(nm(whole), nm(part));
      CHECK((left >= nm(0) && left < nm(part)));
      CHECK(nm(part) * wholeTimes(nm(whole), nm(part)) + left == nm(whole));
    }
  CHECK_THROWS_AS(wholeTimes(nm(5), nm(0)), std::domain_error);
  CHECK_THROWS_AS(rest(nm(5), nm(-1)), std::domain_error);
}

// The trade's rules: blank of sheet 7 is 225-3/4 in, ordered as 226; 158-1/2 stays.
TEST_CASE("an order length goes up to the increment and stays when it is one already") {
  const Length halfInch = Length::inches(0, 32);
  CHECK(roundUp(Length::inches(225, 48), halfInch) == Length::inches(226));
  CHECK(roundUp(Length::inches(158, 32), halfInch) == Length::inches(158, 32));
  CHECK(roundUp(Length::inches(158, 32) + nm(1), halfInch) == Length::inches(159));
  CHECK(roundUp(nm(-7), nm(5)) == nm(-5));
  CHECK(roundUp(nm(0), nm(5)) == nm(0));
  CHECK_THROWS_AS(roundUp(nm(7), nm(0)), std::domain_error);
}

TEST_CASE("half of an odd nanometre falls to the lower side") {
  CHECK(half(nm(7)) == nm(3));
  CHECK(half(nm(-7)) == nm(-4));
  CHECK(half(Length::inches(36)) == Length::inches(18));
}

// ASTM E29 section 6, rounding method: to the nearest; a tie to the even neighbour.
TEST_CASE("rounding takes the nearest, and a tie the even neighbour") {
  struct Case {
    int above, below, rounded;
  };
  const Case cases[] = {{5, 2, 2},     {7, 2, 4},     {-5, 2, -2},  {-7, 2, -4}, {1, 2, 0},   {-1, 2, 0},
                        {3, 2, 2},     {8, 3, 3},     {7, 3, 2},    {-8, 3, -3}, {-7, 3, -2}, {6, 3, 2},
                        {0, 9, 0},     {5, -2, -2},   {-5, -2, 2},  {9, -4, -2}, {10, 4, 2},  {14, 4, 4},
                        {250, 100, 2}, {251, 100, 3}, {249, 100, 2}};
  for (const Case& c : cases) {
    INFO(c.above << " / " << c.below);
    CHECK(roundHalfEven(c.above, c.below) == c.rounded);
  }
  CHECK_THROWS_AS(roundHalfEven(1, 0), std::domain_error);
}

TEST_CASE("rounding holds for products beyond 64 bits") {
  const Int128 big = Int128(kMost) * kMost;
  CHECK(roundHalfEven(big, kMost) == kMost);
  CHECK(roundHalfEven(big + kMost / 2, kMost) == kMost);
  CHECK(roundHalfEven(big + kMost / 2 + 1, kMost) == Int128(kMost) + 1);
  CHECK(roundHalfEven(-big, kMost) == -Int128(kMost));
}

// The trade's rules: z0 + round-half-even((z1-z0)(u-u0)/(u1-u0)) through 128 bits.
TEST_CASE("scaling goes through 128 bits and rounds once") {
  CHECK(scaled(Length::feet(20), 4, 12) == Length::inches(80));
  CHECK(scaled(nm(5), 1, 2) == nm(2));
  CHECK(scaled(nm(7), 1, 2) == nm(4));
  CHECK(scaled(nm(-5), 1, 2) == nm(-2));
  CHECK(scaled(Length::feet(300), Length::feet(40).nanometres(), Length::feet(60).nanometres()) == Length::feet(200));
  CHECK(scaled(nm(kMost), kMost, kMost) == nm(kMost));
  CHECK(scaled(nm(kLeast), kMost, kMost) == nm(kLeast));
  CHECK_THROWS_AS(scaled(nm(kMost), 2, 1), std::overflow_error);
  CHECK_THROWS_AS(scaled(nm(kLeast), -1, 1), std::overflow_error);
  CHECK_THROWS_AS(scaled(nm(1), 1, 0), std::domain_error);
}

// The trade's rules: a row's ordinate is rounded to 1/16 in.
TEST_CASE("an ordinate is rounded to the nearest sixteenth, a tie to the even one") {
  const Length sixteenth = Length::sixtyFourths(4);
  CHECK(roundTo(Length::inches(84, 1), sixteenth) == Length::inches(84));
  CHECK(roundTo(Length::inches(84, 3), sixteenth) == Length::inches(84, 4));
  CHECK(roundTo(Length::inches(84, 2), sixteenth) == Length::inches(84));
  CHECK(roundTo(Length::inches(84, 6), sixteenth) == Length::inches(84, 8));
  CHECK(roundTo(-Length::inches(84, 6), sixteenth) == -Length::inches(84, 8));
  CHECK_THROWS_AS(roundTo(Length::inches(1), Length()), std::domain_error);
  CHECK_THROWS_AS(roundTo(Length::inches(1), -sixteenth), std::domain_error);
}

TEST_CASE("for pixels and weights a length is also a decimal of its units") {
  CHECK(Length::feet(28).inMillimetres() == Approx(8534.4));
  CHECK(Length::feet(28).inInches() == Approx(336));
  CHECK(Length::feet(28).inFeet() == Approx(28));
  CHECK(Length::feet(28).inMetres() == Approx(8.5344));
}

}  // namespace
}  // namespace ribwright
