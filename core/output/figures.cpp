#include "core/output/figures.h"

#include <charconv>

namespace ribwright {
namespace {

constexpr double kilogramsPerPound = 0.45359237;

// As many hundredths, with two decimals.
std::string hundredthsText(Int128 count) {
  const bool negative = count < 0;
  if (negative) count = -count;
  std::string digits;
  for (int i = 0; count > 0 || i <= 2; ++i) {
    if (i == 2) digits.insert(digits.begin(), '.');
    digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(count % 10)));
    count /= 10;
  }
  return negative ? "-" + digits : digits;
}

}  // namespace

std::string smallLength(Length length, UnitSystem units) {
  return units == UnitSystem::FeetInches ? decimalInches(length) : decimalMillimetres(length);
}

std::string largeLength(Length length, UnitSystem units) {
  return units == UnitSystem::FeetInches ? decimalFeet(length) : decimalMetres(length);
}

std::string areaText(Area area, UnitSystem units) {
  const Length side = units == UnitSystem::FeetInches ? Length::feet(1) : Length::millimetres(1000);
  const Area hundredths = area * 100;
  return hundredthsText(roundHalfEven(hundredths.halfSquareNanometres(), (side * side).halfSquareNanometres()));
}

std::string weightText(double kilograms, UnitSystem units) {
  const double weight = units == UnitSystem::FeetInches ? kilograms / kilogramsPerPound : kilograms;
  char text[400];
  const auto end = std::to_chars(text, text + sizeof text, weight, std::chars_format::fixed, 1).ptr;
  return std::string(text, end);
}

std::string spaced(const std::vector<std::string>& marks) {
  std::string text;
  for (const std::string& mark : marks) {
    if (!mark.empty()) text += (text.empty() ? "" : " ") + mark;
  }
  return text;
}

}  // namespace ribwright
