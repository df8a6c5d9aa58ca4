// The writing half of length_text.h.
#include <charconv>
#include <stdexcept>

#include "core/units/length_text.h"

namespace ribwright {

namespace {

constexpr Int128 kInch = 25'400'000;
constexpr Int128 kMillimetre = 1'000'000;
constexpr Int128 kSixtyFourth = 396'875;

Int128 powerOfTen(int exponent) {
  Int128 power = 1;
  for (int i = 0; i < exponent; ++i) power *= 10;
  return power;
}

// 0 <= count < 2^64: the widest is 2^63 nm, written whole.
std::string digits(Int128 count) {
  char buffer[40];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, static_cast<std::uint64_t>(count)).ptr;
  return std::string(buffer, end);
}

// count / 10^decimals with no useless zero at the end; count >= 0.
std::string decimalDigits(Int128 count, int decimals, char sign) {
  while (decimals > 0 && count % 10 == 0) {
    count /= 10;
    --decimals;
  }
  std::string text = digits(count / powerOfTen(decimals));
  if (decimals == 0) return text;
  const std::string behind = digits(count % powerOfTen(decimals));
  return text + sign + std::string(static_cast<std::size_t>(decimals) - behind.size(), '0') + behind;
}

std::string signedDigits(bool negative, const std::string& text) { return negative ? '-' + text : text; }

// 'pieces' of 1/denominator in, as a tape reads them: 12' 3-1/2"   12' 0-1/2"   3-1/2"   1/2"   0"
std::string tapeText(Int128 pieces, Int128 denominator) {
  std::string text = pieces < 0 ? "-" : "";
  if (pieces < 0) pieces = -pieces;
  const Int128 feet = pieces / (12 * denominator);
  const Int128 inches = pieces / denominator % 12;
  Int128 above = pieces % denominator;
  if (feet > 0) text += digits(feet) + "' ";
  if (above == 0) return text + digits(inches) + '"';
  while (above % 2 == 0) {
    above /= 2;
    denominator /= 2;
  }
  if (feet > 0 || inches > 0) text += digits(inches) + '-';
  return text + digits(above) + '/' + digits(denominator) + '"';
}

std::string millimetreText(Int128 nanometres, int decimals, char sign) {
  const Int128 count = roundHalfEven(nanometres, powerOfTen(6 - decimals));
  return signedDigits(count < 0, decimalDigits(count < 0 ? -count : count, decimals, sign));
}

// In units of so many nanometres, at most a foot or a metre.
std::string shortestDecimal(Length length, Int128 unit) {
  const Int128 nanometres = length.nanometres();
  const Int128 size = nanometres < 0 ? -nanometres : nanometres;
  // Nine decimals always suffice: half of the last one is at most half a nanometre.
  int decimals = 0;
  Int128 count = 0;
  for (; decimals <= 9; ++decimals) {
    count = roundHalfEven(size * powerOfTen(decimals), unit);
    if (roundHalfEven(count * unit, powerOfTen(decimals)) == size) break;
  }
  return signedDigits(nanometres < 0, decimalDigits(count, decimals, '.'));
}

}  // namespace

std::string exactText(Length length, UnitSystem units) {
  const Int128 nanometres = length.nanometres();
  if (units == UnitSystem::FeetInches && nanometres % kSixtyFourth == 0) return tapeText(nanometres / kSixtyFourth, 64);
  return millimetreText(nanometres, 6, '.') + " mm";
}

std::string shownText(Length length, const LengthStyle& style, int denominator, int decimals) {
  const Int128 nanometres = length.nanometres();
  if (style.units == UnitSystem::Millimetres) {
    if (decimals < 0 || decimals > 6) throw std::domain_error("millimetres have 0 to 6 decimals");
    return millimetreText(nanometres, decimals, style.decimalSign) + " mm";
  }
  if (denominator < 1 || denominator > 64 || (denominator & (denominator - 1)) != 0)
    throw std::domain_error("a tape reads to 1/1, 1/2, 1/4 ... 1/64 in");
  return tapeText(roundHalfEven(nanometres * denominator, kInch), denominator);
}

Length tapeMark(UnitSystem units) {
  return units == UnitSystem::FeetInches ? Length::inches(0, 4) : Length::millimetres(1);
}

std::string fineText(Length length, const LengthStyle& style) {
  const bool whole = rest(length, tapeMark(style.units)) == Length();
  return shownText(length, style, whole ? 16 : 64, whole ? 0 : 1);
}

std::string decimalInches(Length length) { return shortestDecimal(length, kInch); }

std::string decimalFeet(Length length) { return shortestDecimal(length, 12 * kInch); }

std::string decimalMillimetres(Length length) { return shortestDecimal(length, kMillimetre); }

std::string decimalMetres(Length length) { return shortestDecimal(length, 1000 * kMillimetre); }

}  // namespace ribwright
