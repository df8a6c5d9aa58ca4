#include "core/output/figures.h"

#include <catch2/catch.hpp>

#include "table_units.h"

using namespace ribwright;

TEST_CASE("a table's small lengths are inches or millimetres") {
  CHECK(smallLength(Length::inches(226), feetInches) == "226");
  CHECK(smallLength(Length::inches(158, 32), feetInches) == "158.5");
  CHECK(smallLength(Length::inches(-1, -48), feetInches) == "-1.75");
  CHECK(smallLength(Length::inches(1), millimetres) == "25.4");
  CHECK(smallLength(Length::millimetres(4015), millimetres) == "4015");
}

TEST_CASE("a table's large lengths are feet or metres") {
  CHECK(largeLength(Length::feet(13), feetInches) == "13");
  CHECK(largeLength(Length::feet(13, 3), feetInches) == "13.25");
  CHECK(largeLength(Length(), feetInches) == "0");
  CHECK(largeLength(-Length::feet(0, 6), feetInches) == "-0.5");
  CHECK(largeLength(Length::millimetres(4015), millimetres) == "4.015");
  CHECK(largeLength(Length::feet(1), millimetres) == "0.3048");
  CHECK(largeLength(Length::nanometres(1), millimetres) == "0.000000001");
}

// 13 ft 4 in = 13.333... ft: no finite decimal, so as many digits as name the nanometre (4 064 000 000 nm) and no more.
TEST_CASE("feet that are no finite decimal read back as the same nanometre") {
  CHECK(largeLength(Length::feet(13, 4), feetInches) == "13.333333333");
  CHECK(largeLength(Length::nanometres(1), feetInches) == "0.000000003");
  CHECK(largeLength(Length::nanometres(2), feetInches) == "0.000000007");
}

// 1 ft2 = 0.09290304 m2 exactly (1 in = 25.4 mm).
TEST_CASE("areas have two decimals") {
  CHECK(areaText(Length::feet(3) * Length::feet(13), feetInches) == "39.00");
  CHECK(areaText(Length::feet(100) * Length::feet(1), millimetres) == "9.29");
  CHECK(areaText(Area(), feetInches) == "0.00");
  CHECK(areaText(Length::feet(0, 1) * Length::feet(0, 1), feetInches) == "0.01");  // 1/144 = 0.00694...
}

// ASTM E29 section 6: a tie goes to the even neighbour. 100 mm x 50 mm = 0.005 m2, 100 mm x 150 mm = 0.015 m2.
TEST_CASE("an area half way between two hundredths goes to the even one") {
  const Length side = Length::millimetres(100);
  CHECK(areaText(side * Length::millimetres(50), millimetres) == "0.00");
  CHECK(areaText(side * Length::millimetres(150), millimetres) == "0.02");
  CHECK(areaText(side * Length::millimetres(250), millimetres) == "0.02");
  CHECK(areaText(side * Length::nanometres(150'000'001), millimetres) == "0.02");
  CHECK(areaText(side * Length::nanometres(249'999'999), millimetres) == "0.02");
  CHECK(areaText(side * Length::nanometres(250'000'001), millimetres) == "0.03");
}

// 1 lb = 0.45359237 kg exactly (Federal Register, 1 July 1959).
TEST_CASE("weights have one decimal") {
  CHECK(weightText(45.359237, feetInches) == "100.0");
  CHECK(weightText(45.359237, millimetres) == "45.4");
  CHECK(weightText(0, feetInches) == "0.0");
  CHECK(weightText(12345.67, millimetres) == "12345.7");
}
