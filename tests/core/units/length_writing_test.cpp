// How lengths are written for people, files and tables.
#include "tests/core/units/length_samples.h"
#include "tests/core/units/nanometres.h"

namespace ribwright {
namespace {

TEST_CASE("exact text stands in feet and inches where a sixty-fourth is exact") {
  const auto text = [](Length length) { return exactText(length, UnitSystem::FeetInches); };
  CHECK(text(Length::feet(12, 3, 32)) == "12' 3-1/2\"");
  CHECK(text(Length::feet(12)) == "12' 0\"");
  CHECK(text(Length::feet(12, 0, 32)) == "12' 0-1/2\"");
  CHECK(text(Length::feet(0, 11, 63)) == "11-63/64\"");
  CHECK(text(Length::inches(0, 48)) == "3/4\"");
  CHECK(text(Length()) == "0\"");
  CHECK(text(-Length::inches(1, 48)) == "-1-3/4\"");
  CHECK(text(-Length::feet(3, 0, 1)) == "-3' 0-1/64\"");
}

TEST_CASE("exact text falls back on millimetres, to the last nanometre") {
  CHECK(exactText(Length::inches(1) + nm(1), UnitSystem::FeetInches) == "25.400001 mm");
  CHECK(exactText(Length::millimetres(3750), UnitSystem::FeetInches) == "3750 mm");
  CHECK(exactText(Length::inches(1), UnitSystem::Millimetres) == "25.4 mm");
  CHECK(exactText(nm(-1), UnitSystem::Millimetres) == "-0.000001 mm");
  CHECK(exactText(nm(10'020'030), UnitSystem::Millimetres) == "10.02003 mm");
  CHECK(exactText(nm(INT64_MAX), UnitSystem::Millimetres) == "9223372036854.775807 mm");
  CHECK(exactText(nm(INT64_MIN), UnitSystem::FeetInches) == "-9223372036854.775808 mm");
}

// ASTM E29 section 6 once more: 1/32 beside the even sixteenth falls, beside the odd one rises.
TEST_CASE("shown text is rounded half to even to what a tape reads") {
  CHECK(shownText(Length::inches(3, 2), kFeetInches) == "3\"");
  CHECK(shownText(Length::inches(3, 6), kFeetInches) == "3-1/8\"");
  CHECK(shownText(Length::inches(3, 5), kFeetInches) == "3-1/16\"");
  CHECK(shownText(Length::feet(11, 11, 63), kFeetInches) == "12' 0\"");
  CHECK(shownText(Length::feet(12, 3, 33), kFeetInches, 64) == "12' 3-33/64\"");
  CHECK(shownText(Length::feet(12, 3, 33), kFeetInches, 1) == "12' 4\"");
  CHECK(shownText(Length::feet(12, 3, 32), kFeetInches, 2) == "12' 3-1/2\"");
  CHECK(shownText(Length::inches(0, -2), kFeetInches) == "0\"");
  CHECK(shownText(Length::inches(-3, -6), kFeetInches) == "-3-1/8\"");
  CHECK(shownText(Length::feet(12, 3, 32), kFeetInchesComma) == "12' 3-1/2\"");
}

TEST_CASE("shown millimetres keep at most the decimals asked for and the decimal sign") {
  CHECK(shownText(nm(44'450'000), kMillimetres) == "44 mm");
  CHECK(shownText(nm(44'500'000), kMillimetres) == "44 mm");
  CHECK(shownText(nm(45'500'000), kMillimetres) == "46 mm");
  CHECK(shownText(nm(44'450'000), kMillimetres, 16, 1) == "44.4 mm");
  CHECK(shownText(nm(44'450'000), kMillimetresComma, 16, 2) == "44,45 mm");
  CHECK(shownText(nm(44'450'000), kMillimetresComma, 16, 6) == "44,45 mm");
  CHECK(shownText(nm(914'400'001), kMillimetres, 16, 6) == "914.400001 mm");
  CHECK(shownText(nm(-400'000), kMillimetres) == "0 mm");
  CHECK(shownText(nm(-600'000), kMillimetres) == "-1 mm");
}

TEST_CASE("a tape without such a mark is a mistake of the program and is thrown") {
  for (const int denominator : {0, -1, 3, 10, 128})
    CHECK_THROWS_AS(shownText(nm(1), kFeetInches, denominator), std::domain_error);
  for (const int decimals : {-1, 7}) CHECK_THROWS_AS(shownText(nm(1), kMillimetres, 16, decimals), std::domain_error);
}

TEST_CASE("decimal inches and millimetres are the shortest that read back") {
  CHECK(decimalInches(Length::feet(12, 3, 32)) == "147.5");
  CHECK(decimalInches(Length::sixtyFourths(1)) == "0.015625");
  CHECK(decimalInches(Length::feet(12)) == "144");
  CHECK(decimalInches(Length()) == "0");
  CHECK(decimalInches(-Length::inches(1, 48)) == "-1.75");
  CHECK(decimalInches(nm(1)) == "0.00000004");
  CHECK(decimalInches(Length::millimetres(3750)) == "147.63779528");
  CHECK(decimalInches(nm(INT64_MIN)) == "-363124883340.73920504");
  CHECK(decimalMillimetres(Length::inches(1, 48)) == "44.45");
  CHECK(decimalMillimetres(nm(-1)) == "-0.000001");
  CHECK(decimalMillimetres(Length::feet(10)) == "3048");
}

}  // namespace
}  // namespace ribwright
