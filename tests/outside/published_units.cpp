// Units and rounding against published values. Documents are named with what was read in them; rows marked "arithmetic
// only" were worked out from a formula and check no rule.
#include <catch2/catch.hpp>

#include "core/job/sheet_weight.h"
#include "core/output/figures.h"
#include "core/units/length_text.h"

namespace ribwright {
namespace {

constexpr LengthStyle kFeetInches{UnitSystem::FeetInches, '.'};
constexpr LengthStyle kMillimetres{UnitSystem::Millimetres, '.'};

Length read(std::string_view text, const LengthStyle& style) {
  const auto length = parseLength(text, style);
  if (!length) FAIL(length.faults().front().message);
  return length.value();
}

// Federal Register, 1 July 1959, "Refinement of Values for the Yard and the Pound": 1 yd = 0.9144 m exactly, from which
// 1 in = 25.4 mm exactly.
TEST_CASE("Federal Register 1959: the yard is 0.9144 m and the inch 25.4 mm, exactly") {
  CHECK(Length::feet(3) == read("0.9144 m", kMillimetres));
  CHECK(36 * Length::inches(1) == read("914.4 mm", kFeetInches));
  CHECK(Length::inches(1).nanometres() == 25'400'000);
  CHECK(exactText(read("36 in", kMillimetres), UnitSystem::Millimetres) == "914.4 mm");
  CHECK(exactText(read("914.4", kMillimetres), UnitSystem::FeetInches) == "3' 0\"");
  CHECK(decimalInches(read("0.9144 m", kFeetInches)) == "36");
}

// The same announcement: 1 lb = 0.45359237 kg exactly.
TEST_CASE("Federal Register 1959: the pound is 0.45359237 kg") {
  CHECK(weightText(45'359.237, UnitSystem::FeetInches) == "100000.0");
  CHECK(kilogramsPerSquareMetre(1) * (0.3048 * 0.3048) == Approx(0.45359237).epsilon(1e-14));
}

// NIST SP 811 Appendix B lists inch to metre as 2.54 E-02: not seen in a copy, so arithmetic only.
TEST_CASE("arithmetic only: an inch is 2.54 E-02 m") { CHECK(Length::inches(1) == read("0.0254 m", kMillimetres)); }

struct Rounded {
  const char* value;
  const char* toATenth;
};

// ASTM E29 section 6, rounding method, its examples to 0.1. A binary fraction cannot tell 45.45 from its neighbours;
// whole nanometres can.
TEST_CASE("ASTM E29: 45.7500 is 45.8, 45.4500 is 45.4, 45.45001 is 45.5") {
  for (const Rounded& row : {Rounded{"45.7500", "45.8"}, Rounded{"45.4500", "45.4"}, Rounded{"45.45001", "45.5"}}) {
    const Length exact = read(row.value, kMillimetres);
    const Length tenth = Length::nanometres(100'000);
    CHECK(roundTo(exact, tenth) == read(row.toATenth, kMillimetres));
    CHECK(roundTo(-exact, tenth) == -read(row.toATenth, kMillimetres));
    CHECK(shownText(exact, kMillimetres, 16, 1) == std::string(row.toATenth).append(" mm"));
    // The same digits as a bare ratio: ten times the value, to a whole.
    CHECK(roundHalfEven(exact.nanometres(), tenth.nanometres()) ==
          read(row.toATenth, kMillimetres).nanometres() / tenth.nanometres());
  }
}

// NAVEDTRA 14044, page of figure 2-17: decimals times 16, a half and over counting up. Away from a tie that is the
// nearest sixteenth: 0.12 in x 16 = 1.92, which is 2/16 = 1/8.
TEST_CASE("NAVEDTRA 14044: 0.12 in is 1/8 in on a tape") {
  CHECK(shownText(read("0.12 in", kFeetInches), kFeetInches, 16) == "1/8\"");
  CHECK(shownText(read("111.12 in", kFeetInches), kFeetInches, 16) == "9' 3-1/8\"");
  CHECK(roundHalfEven(12 * 16, 100) == 2);
}

}  // namespace
}  // namespace ribwright
