#include "core/drawing/dimension_chain.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/drawing/shown_length.h"

using namespace ribwright;

namespace {

const LengthStyle feetInches{UnitSystem::FeetInches, '.'};
const LengthStyle millimetres{UnitSystem::Millimetres, ','};

std::vector<std::string> wordsOf(const std::vector<DimensionSpace>& spaces) {
  std::vector<std::string> words;
  for (const DimensionSpace& space : spaces) words.push_back(space.words);
  return words;
}

Length sumOf(const std::vector<DimensionSpace>& spaces, const LengthStyle& style) {
  Length sum;
  for (const DimensionSpace& space : spaces) sum += parseLength(space.words, style).value();
  return sum;
}

}  // namespace

TEST_CASE("a door 4 ft from the corner of a 20 ft wall gives three spaces") {
  const auto spaces = spacesBetween({Length(), Length::feet(20), Length::feet(4), Length::feet(7)}, feetInches);
  CHECK(wordsOf(spaces) == std::vector<std::string>{"4' 0\"", "3' 0\"", "13' 0\""});
}

// Three spaces of 1/3 in: each would print 5/16 in, and three of those are 15/16 in, not 1 in.
TEST_CASE("figures are differences of rounded places, so that they add up as printed") {
  const Length third = scaled(Length::inches(1), 1, 3);
  const auto spaces = spacesBetween({Length(), third, third * 2, Length::inches(1)}, feetInches);
  CHECK(wordsOf(spaces) == std::vector<std::string>{"5/16\"", "3/8\"", "5/16\""});
  CHECK(sumOf(spaces, feetInches) == Length::inches(1));
}

TEST_CASE("metric figures stand without their unit, which the page states once") {
  const auto mm = [](std::int64_t count) { return Length::millimetres(count); };
  CHECK(wordsOf(spacesBetween({mm(0), mm(6100), mm(11'100)}, millimetres)) == std::vector<std::string>{"6100", "5000"});
}

TEST_CASE("equal places make one, and places that a tape cannot tell apart too") {
  const Length hair = Length::nanometres(400);
  CHECK(spacesBetween({Length(), Length::feet(3), Length::feet(3), Length::feet(3) + hair}, feetInches).size() == 1);
}

TEST_CASE("any chain adds up to its printed total") {
  std::mt19937_64 dice(20260302);
  for (const LengthStyle& style : {feetInches, millimetres}) {
    for (int round = 0; round < 500; ++round) {
      std::vector<Length> places{Length()};
      for (int i = 0; i < 12; ++i)
        places.push_back(Length::nanometres(static_cast<std::int64_t>(dice() % 30'000'000'000)));
      const auto spaces = spacesBetween(places, style);
      const Length last = *std::max_element(places.begin(), places.end());
      REQUIRE(sumOf(spaces, style) == parseLength(dimensionText(last, style), style).value());
    }
  }
}

TEST_CASE("lengths to cut are shown to the last mark they need") {
  CHECK(cutText(Length::inches(158, 32), feetInches) == "13' 2-1/2\"");
  CHECK(cutText(Length::inches(158, 1), feetInches) == "13' 2-1/64\"");
  CHECK(cutText(Length::millimetres(6770), millimetres) == "6770");
  CHECK(cutText(Length::nanometres(6'770'500'000), millimetres) == "6770,5");
}
