#include "core/output/figures.h"

#include <charconv>

namespace ribwright {
namespace {

constexpr double kilogramsPerPound = 0.45359237;

// `count` units of 10^-decimals.
std::string fixedText(Int128 count, int decimals) {
  const bool negative = count < 0;
  if (negative) count = -count;
  std::string digits;
  for (int i = 0; count > 0 || i <= decimals; ++i) {
    if (i == decimals && decimals > 0) digits.insert(digits.begin(), '.');
    digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(count % 10)));
    count /= 10;
  }
  return negative ? "-" + digits : digits;
}

// Fewest decimals of a unit so many nanometres long that name this very nanometre.
std::string shortestText(Length length, Int128 unit) {
  const Int128 nanometres = length.nanometres();
  Int128 power = 1;
  for (int decimals = 0;; ++decimals, power *= 10) {
    const Int128 count = roundHalfEven(nanometres * power, unit);
    if (roundHalfEven(count * unit, power) == nanometres) return fixedText(count, decimals);
  }
}

}  // namespace

std::string smallLength(Length length, UnitSystem units) {
  return units == UnitSystem::FeetInches ? decimalInches(length) : decimalMillimetres(length);
}

std::string largeLength(Length length, UnitSystem units) {
  const Length unit = units == UnitSystem::FeetInches ? Length::feet(1) : Length::millimetres(1000);
  return shortestText(length, unit.nanometres());
}

std::string areaText(Area area, UnitSystem units) {
  const Length side = units == UnitSystem::FeetInches ? Length::feet(1) : Length::millimetres(1000);
  const Area hundredths = area * 100;
  return fixedText(roundHalfEven(hundredths.halfSquareNanometres(), (side * side).halfSquareNanometres()), 2);
}

std::string weightText(double kilograms, UnitSystem units) {
  const double weight = units == UnitSystem::FeetInches ? kilograms / kilogramsPerPound : kilograms;
  char text[400];
  const auto end = std::to_chars(text, text + sizeof text, weight, std::chars_format::fixed, 1).ptr;
  return std::string(text, end);
}

}  // namespace ribwright
