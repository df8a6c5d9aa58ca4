#include "core/units/angle.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

namespace ribwright {
namespace {

constexpr std::int64_t kOne = 1'000'000'000;

Slope atDegrees(Angle angle) { return Slope{Slope::As::Angle, {}, Length::inches(12), angle}; }

// The house's manner: angles exact at 0 and 90 degrees.
TEST_CASE("sine and cosine are exact at every right angle, whatever the turns") {
  for (std::int64_t turn = -3; turn <= 3; ++turn) {
    const auto at = [&](std::int64_t degrees) { return Angle::degrees(degrees + 360 * turn); };
    CHECK((sineBillionths(at(0)) == 0 && cosineBillionths(at(0)) == kOne));
    CHECK((sineBillionths(at(90)) == kOne && cosineBillionths(at(90)) == 0));
    CHECK((sineBillionths(at(180)) == 0 && cosineBillionths(at(180)) == -kOne));
    CHECK((sineBillionths(at(270)) == -kOne && cosineBillionths(at(270)) == 0));
  }
}

TEST_CASE("known angles to the last of nine decimals") {
  CHECK(sineBillionths(Angle::degrees(30)) == 500'000'000);
  CHECK(cosineBillionths(Angle::degrees(60)) == 500'000'000);
  CHECK(sineBillionths(Angle::degrees(45)) == 707'106'781);
  CHECK(cosineBillionths(Angle::degrees(45)) == 707'106'781);
  CHECK(sineBillionths(Angle::degrees(60)) == 866'025'404);
  CHECK(sineBillionths(Angle::degrees(210)) == -500'000'000);
  CHECK(cosineBillionths(Angle::degrees(120)) == -500'000'000);
  CHECK(sineBillionths(Angle{1}) == 17);  // one millionth of a degree is 17.45 thousand-millionths
}

TEST_CASE("sine and cosine mirror each other exactly") {
  std::mt19937_64 random(20);
  std::uniform_int_distribution<std::int64_t> pick(-720'000'000, 720'000'000);
  for (int i = 0; i < 20'000; ++i) {
    const Angle angle{pick(random)};
    const Angle right{90'000'000 - angle.microdegrees};
    CHECK(sineBillionths(angle) == cosineBillionths(right));
    CHECK(sineBillionths(Angle{-angle.microdegrees}) == -sineBillionths(angle));
    CHECK(cosineBillionths(Angle{-angle.microdegrees}) == cosineBillionths(angle));
    CHECK(sineBillionths(Angle{angle.microdegrees + 180'000'000}) == -sineBillionths(angle));
    const Int128 s = sineBillionths(angle);
    const Int128 c = cosineBillionths(angle);
    const Int128 off = s * s + c * c - Int128(kOne) * kOne;
    CHECK((off <= 2 * kOne && off >= -2 * kOne));  // each is off by half of the last decimal at most
  }
}

TEST_CASE("the largest angles are turned back without leaving the range") {
  CHECK(cosineBillionths(Angle{INT64_MAX}) == cosineBillionths(Angle{INT64_MAX % 360'000'000}));
  CHECK(sineBillionths(Angle{INT64_MIN}) == sineBillionths(Angle{INT64_MIN % 360'000'000}));
}

TEST_CASE("a rise per run is exact") {
  CHECK(riseOver(Slope::per12(4), Length::feet(20)) == Length::inches(80));
  CHECK(riseOver(Slope::per12(0, 32), Length::feet(20)) == Length::inches(10));
  CHECK(riseOver(Slope::per12(4), -Length::feet(20)) == -Length::inches(80));
  CHECK(riseOver(Slope::per12(0), Length::feet(20)) == Length());
  const Slope metric{Slope::As::RisePerRun, Length::millimetres(150), Length::millimetres(250), {}};
  CHECK(riseOver(metric, Length::millimetres(1200)) == Length::millimetres(720));
}

TEST_CASE("a rise that is no whole nanometre goes to the nearest, a tie to the even one") {
  const Slope oneInTwo{Slope::As::RisePerRun, Length::nanometres(1), Length::nanometres(2), {}};
  CHECK(riseOver(oneInTwo, Length::nanometres(5)) == Length::nanometres(2));
  CHECK(riseOver(oneInTwo, Length::nanometres(7)) == Length::nanometres(4));
  CHECK(riseOver(Slope::per12(1), Length::nanometres(7)) == Length::nanometres(1));
}

TEST_CASE("0 and 45 degrees are exact for any length") {
  for (const std::int64_t count : {std::int64_t(1), std::int64_t(12'192'000'001), INT64_MAX, INT64_MIN}) {
    const Length level = Length::nanometres(count);
    CHECK(riseOver(atDegrees(Angle::degrees(0)), level) == Length());
    CHECK(riseOver(atDegrees(Angle::degrees(45)), level) == level);
  }
}

// The tangents of 30, 60 and 14 degrees to 21 decimals, from a table: the rise over 100 m is right to the nanometre.
TEST_CASE("other angles rise by their tangent to the nanometre") {
  const Length level = Length::millimetres(100'000);
  CHECK(riseOver(atDegrees(Angle::degrees(30)), level) == Length::nanometres(57'735'026'919));
  CHECK(riseOver(atDegrees(Angle::degrees(60)), level) == Length::nanometres(173'205'080'757));
  CHECK(riseOver(atDegrees(Angle::degrees(14)), level) == Length::nanometres(24'932'800'284));
  CHECK(riseOver(atDegrees(Angle::degrees(30)), -level) == Length::nanometres(-57'735'026'919));
}

TEST_CASE("a slope without meaning is a mistake of the program and is thrown") {
  CHECK_THROWS_AS(riseOver(atDegrees(Angle::degrees(90)), Length::feet(1)), std::domain_error);
  CHECK_THROWS_AS(riseOver(atDegrees(Angle{-1}), Length::feet(1)), std::domain_error);
  CHECK_THROWS_AS(riseOver(Slope{Slope::As::RisePerRun, Length::inches(4), Length(), {}}, Length::feet(1)),
                  std::domain_error);
  CHECK_THROWS_AS(riseOver(atDegrees(Angle{89'999'999}), Length::nanometres(INT64_MAX)), std::overflow_error);
}

}  // namespace
}  // namespace ribwright
