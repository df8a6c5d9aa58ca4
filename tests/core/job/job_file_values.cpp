// How single values are written in a job file (core/job/job_file_text.h).
#include <catch2/catch.hpp>

#include "core/job/job_file_text.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr UnitSystem ft = UnitSystem::FeetInches, mm = UnitSystem::Millimetres;

}  // namespace

TEST_CASE("a length in a file means the same whatever the job's units are") {
  const std::vector<std::pair<std::string, Length>> good = {
      {"12' 3-1/2\"", Length::feet(12, 3, 32)},
      {"3750 mm", Length::millimetres(3750)},
      {"0", Length()},
      {"-1 3/4 in", Length::inches(-1, -48)},
      {"3.75 m", Length::millimetres(3750)},
      {"20' / 3", scaled(Length::feet(20), 1, 3)},
  };
  for (const auto& [text, length] : good) {
    INFO(text);
    for (const UnitSystem units : {ft, mm}) {
      const auto read = fileLength(text, units);
      REQUIRE(read);
      CHECK(read.value() == length);
    }
  }
  for (const std::string text : {"84", "12-3.5", "3-1/2", "12' 6", "1,5 mm", "feet", "", "7''6"}) {
    INFO(text);
    CHECK_FALSE(fileLength(text, ft));
    CHECK_FALSE(fileLength(text, mm));
  }
}

TEST_CASE("slopes are written short and read back exactly") {
  const auto slope = [](Length rise, Length run) { return Slope{Slope::As::RisePerRun, rise, run, {}}; };
  CHECK(slopeText(Slope::per12(4), ft) == "4:12");
  CHECK(slopeText(Slope::per12(3, 32), ft) == "3.5:12");
  CHECK(slopeText(slope(Length::millimetres(150), Length::millimetres(250)), mm) == "150 in 250");
  CHECK(slopeText(slope(Length::millimetres(150), Length::millimetres(250)), ft) == "5.9055118:9.8425197");
  CHECK(slopeText(Slope::per12(4), mm) == "101.6 in 304.8");
  CHECK(slopeText(Slope{Slope::As::Angle, {}, Length::inches(12), Angle{9'500'001}}, ft) == "9.500001 deg");
  for (const Slope& each : {Slope::per12(4), slope(Length::nanometres(1), Length::nanometres(3)), Slope::per12(0),
                            slope(Length::millimetres(150), Length::millimetres(250))}) {
    for (const UnitSystem units : {ft, mm}) {
      const auto read = slopeFromText(slopeText(each, units), units);
      REQUIRE(read);
      CHECK(read.value() == each);
    }
  }
}

TEST_CASE("a slope may be said in several ways") {
  const Slope four = Slope::per12(4);
  for (const std::string text :
       {"4:12", " 4 : 12 ", "4 in 12", "4\":12\"", "4 in in 12 in", "4 in : 1 ft", "4\" in 1'"}) {
    INFO(text);
    const auto read = slopeFromText(text, ft);
    REQUIRE(read);
    CHECK(read.value() == four);
  }
  for (const std::string text : {"9.5 deg", "9.5deg", "9.5 degrees", "9.5°", "9.50 deg"}) {
    INFO(text);
    const auto read = slopeFromText(text, mm);
    REQUIRE(read);
    CHECK(read.value().angle == Angle{9'500'000});
  }
}

TEST_CASE("a slope goes up to 50 in 1 and 89 degrees, and no further") {
  CHECK(slopeFromText("600:12", ft));
  CHECK_FALSE(slopeFromText("600.001:12", ft));
  CHECK(slopeFromText("89 deg", ft));
  CHECK_FALSE(slopeFromText("89.000001 deg", ft));
  CHECK(slopeFromText("0:12", ft));
  CHECK_FALSE(slopeFromText("1:0", ft));
  CHECK_FALSE(slopeFromText("1:-12", ft));
}

TEST_CASE("degrees have at most six decimals and no exponent") {
  const std::vector<std::pair<std::string, std::int64_t>> good = {
      {"0", 0},           {"9.5", 9'500'000}, {"-0.000001", -1}, {"359.999999", 359'999'999}, {"-360", -360'000'000},
      {"1.50", 1'500'000}};
  for (const auto& [text, microdegrees] : good) {
    INFO(text);
    const auto read = degreesFromText(text);
    REQUIRE(read);
    CHECK(read.value().microdegrees == microdegrees);
    CHECK(degreesFromText(degreesText(read.value())).value() == read.value());
  }
  for (const std::string text : {"", "-", ".5", "5.", "1e2", "0.0000001", "12345678", "1.2.3", "+3", "nan"}) {
    INFO(text);
    CHECK_FALSE(degreesFromText(text));
  }
  CHECK(degreesText(Angle{-9'500'000}) == "-9.5");
  CHECK(degreesText(Angle{1}) == "0.000001");
  CHECK(degreesText(Angle{90'000'000}) == "90");
}

TEST_CASE("the nearest word is the one with the fewest letters to change") {
  CHECK(nearestOf("color", {"cover", "colour", "columns"}) == "colour");
  CHECK(nearestOf("wals", {"name", "walls", "walks"}) == "walls");  // the first of equals
  CHECK(nearestOf("x", {}).empty());
}

TEST_CASE("what is quoted stands on one line and is not cut inside a letter") {
  CHECK(inQuotes("a\nb\tc") == "\"a b c\"");
  std::string many, kept;
  for (int i = 0; i < 70; ++i) many += "é";
  for (int i = 0; i < 60; ++i) kept += "é";
  CHECK(ribwright::inQuotes(many) == "\"" + kept + "...\"");
}

}  // namespace ribwright
