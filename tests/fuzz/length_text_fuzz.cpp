// Any text at all: the reader ends, says why it refuses in one line, and what it accepts reads back the same nanometre.
// Text made from a known length is read as that length.
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "core/units/length_text.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {
namespace {

constexpr std::uint64_t kTextSeed = 20'250'517;

constexpr std::array kStyles{LengthStyle{UnitSystem::FeetInches, '.'}, LengthStyle{UnitSystem::FeetInches, ','},
                             LengthStyle{UnitSystem::Millimetres, '.'}, LengthStyle{UnitSystem::Millimetres, ','}};

LengthStyle anyStyle(Dice& dice) { return kStyles[static_cast<std::size_t>(dice.between(0, 3))]; }

// What length text is made of, so that random strings come near to being one.
const std::vector<std::string> kBits{"1",   "12",  "3",    "0",  "147.5", "3,75", "999999999999999999",
                                     "1/2", "3/4", "-1/2", "'",  "\"",    "''",   "′",
                                     "″",   "’",   "”",    "½",  "ft",    "in",   "mm",
                                     "cm",  "m",   "in.",  " ",  "  ",    "-",    " - ",
                                     "–",   "+",   "*",    "/",  "(",     ")",    ".",
                                     ",",   "@",   ";",    "\n", "\t",    "é",    "x",
                                     "e",   "\xff"};

const std::vector<std::string> kGood{"12' 3-1/2\"",   "12 ft 3.5 in", "12-3-1/2",       "12-3.5",          "3-1/2",
                                     "147.5",         "3750 mm",      "3.75 m",         "12' - 6\"",       "-1-3/4\"",
                                     "(12' - 6\")/2", "14 * 36\"",    "25'/3",          "2*(3'+(1'+6\"))", "12′ 6″",
                                     "12,5",          "3½",           "20', 4@25', 20'"};

std::string randomBits(Dice& dice) {
  std::string text;
  for (int i = dice.small(0, 14); i > 0; --i) text += dice.of(kBits);
  return text;
}

std::string randomBytes(Dice& dice) {
  std::string text;
  for (int i = dice.small(0, 40); i > 0; --i) text += static_cast<char>(dice.between(0, 255));
  return text;
}

std::string changed(std::string text, Dice& dice) {
  for (int i = dice.of({1, 1, 2, 3}); i > 0; --i) {
    const auto at = static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(text.size())));
    switch (dice.between(0, 4)) {
      case 0:
        text.insert(at, dice.of(kBits));
        break;
      case 1:
        text.erase(at, static_cast<std::size_t>(dice.between(1, 3)));
        break;
      case 2:
        text = text.substr(0, at) + dice.of(kGood);
        break;
      case 3:
        if (at < text.size()) text[at] = static_cast<char>(dice.between(32, 126));
        break;
      default:
        text.insert(at, text.substr(0, static_cast<std::size_t>(dice.between(0, 8))));
    }
  }
  return text;
}

std::string anyText(Dice& dice) {
  switch (dice.between(0, 3)) {
    case 0:
      return randomBytes(dice);
    case 1:
      return randomBits(dice);
    default:
      return changed(dice.of(kGood), dice);
  }
}

bool isOneLine(const std::string& message) {
  return std::none_of(message.begin(), message.end(), [](char c) { return (c >= 0 && c < ' ') || c == '\x7f'; });
}

// "" when all is well.
std::string complaint(const std::string& text, const LengthStyle& style, int& accepted) {
  const auto length = parseLength(text, style);
  if (!length) {
    const std::string& message = length.faults().front().message;
    if (length.faults().size() != 1 || message.find("is no length") == std::string::npos) return "no word about it";
    return isOneLine(message) && message.size() < 500 ? "" : "the word about it is no line";
  }
  ++accepted;
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    const auto again = parseLength(exactText(length.value(), units), {style.units, '.'});
    if (!again || again.value() != length.value()) return "reads back another length";
  }
  const auto spaced = parseLength("  " + text + " ", style);
  if (!spaced || spaced.value() != length.value()) return "space around it changes it";
  if (length.value().nanometres() == INT64_MIN) return "";
  const auto turned = parseLength("-(" + exactText(length.value(), style.units) + ")", {style.units, '.'});
  return turned && turned.value() == -length.value() ? "" : "a sign in front does not turn it";
}

std::string listComplaint(const std::string& text, const LengthStyle& style) {
  const auto lengths = parseLengthString(text, style);
  if (!lengths) return lengths.faults().empty() ? "no word about the list" : "";
  const auto again = parseLengthString(lengthStringText(lengths.value(), style), style);
  return again && again.value() == lengths.value() ? "" : "the list reads back another";
}

TEST_CASE("any text is read or refused, and what is read comes back the same") {
  int accepted = 0;
  for (int i = 0; i < 400'000; ++i) {
    Dice dice(kTextSeed, i);
    const std::string text = anyText(dice);
    const LengthStyle style = anyStyle(dice);
    const std::string wrong = complaint(text, style, accepted) + listComplaint(text, style);
    if (wrong.empty()) continue;
    INFO("seed " << kTextSeed << ", text " << i << ": " << text);
    FAIL(wrong);
  }
  // Were fewer than one in twenty read, the texts would prove little about reading.
  CHECK(accepted > 20'000);
}

// A text and the nanometres that it means, as a fraction of small whole numbers kept by other means than the reader's.
struct Made {
  std::string text;
  Int128 above = 0;
  Int128 below = 1;
};

std::string mark(Dice& dice, std::initializer_list<const char*> marks) { return dice.of(marks); }

// Feet, inches and a fraction in one of the ways of writing them.
Made madeFeetInches(Dice& dice, const LengthStyle& style) {
  const std::int64_t feet = dice.between(0, 400);
  const std::int64_t inches = dice.between(0, 11);
  const std::int64_t of = std::int64_t(1) << dice.between(1, 6);
  const std::int64_t parts = dice.between(0, of - 1);
  Made made{"", (feet * 12 + inches) * Int128(25'400'000) + parts * Int128(25'400'000) / of};
  const std::string foot = mark(dice, {"'", "′", "’", " ft", "ft", " feet", " FT. "});
  const std::string inch = mark(dice, {"\"", "″", "”", "''", " in", "in", " inches", " in."});
  const bool comma = style.decimalSign == ',';
  std::string behind = std::to_string(inches);
  if (parts != 0 && of <= 4 && dice.oneIn(3))
    behind.append(comma ? "," : ".").append(std::to_string(parts * 100 / of + 100), 1);
  else if (parts != 0)
    behind.append(dice.oneIn(2) ? " " : "-").append(std::to_string(parts)).append("/").append(std::to_string(of));
  const std::string between = mark(dice, {" ", "", "  "});
  made.text = std::to_string(feet) + foot + between + behind + inch;
  return made;
}

Made madeMetric(Dice& dice, const LengthStyle& style) {
  const std::int64_t nanometres = dice.length(Length(), Length::millimetres(200'000)).nanometres();
  const int decimals = dice.of({6, 7, 9});
  std::string digits = std::to_string(nanometres);
  while (static_cast<int>(digits.size()) <= decimals) digits.insert(0, 1, '0');
  digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, style.decimalSign);
  return Made{digits.append(decimals == 6 ? " mm" : decimals == 7 ? "cm" : " m"), nanometres};
}

Made madeExpression(Dice& dice, const LengthStyle& style, int depth, bool inside);

Made madePrimary(Dice& dice, const LengthStyle& style, int depth) {
  if (depth > 0 && dice.oneIn(3)) {
    Made inner = madeExpression(dice, style, depth - 1, true);
    inner.text = "(" + inner.text + ")";
    return inner;
  }
  return dice.oneIn(3) ? madeMetric(dice, style) : madeFeetInches(dice, style);
}

Made madeProduct(Dice& dice, const LengthStyle& style, int depth) {
  Made made = madePrimary(dice, style, depth);
  const std::int64_t number = dice.between(1, 9);
  const std::string digits = std::to_string(number);
  switch (dice.between(0, 5)) {
    case 0:
      return Made{made.text + mark(dice, {"*", " * ", " × "}) + digits, made.above * number, made.below};
    case 1:
      return Made{digits + mark(dice, {"*", " * "}) + made.text, made.above * number, made.below};
    case 2:
      return Made{made.text + mark(dice, {"/", " / ", " ÷ "}) + digits, made.above, made.below * number};
    default:
      return made;
  }
}

Made madeExpression(Dice& dice, const LengthStyle& style, int depth, bool inside) {
  Made made = madeProduct(dice, style, depth);
  if (dice.oneIn(6)) made = Made{"-" + made.text, -made.above, made.below};
  for (int more = dice.small(0, 2); more > 0; --more) {
    const bool minus = inside && dice.oneIn(2);
    const Made other = madeProduct(dice, style, depth);
    made.text += (minus ? std::string(" - ") : mark(dice, {" + ", "+"})) + other.text;
    made.above = made.above * other.below + (minus ? -1 : 1) * other.above * made.below;
    made.below *= other.below;
  }
  return made;
}

// Half to even, reckoned apart from the core: twice the distance to the neighbour below decides.
Int128 nearest(const Made& made) {
  Int128 lower = made.above / made.below;
  if (lower * made.below > made.above) --lower;
  const Int128 twice = (made.above - lower * made.below) * 2;
  if (twice == made.below) return lower % 2 == 0 ? lower : lower + 1;
  return twice > made.below ? lower + 1 : lower;
}

TEST_CASE("text made from known lengths is read as what it was made from") {
  for (int i = 0; i < 100'000; ++i) {
    Dice dice(kTextSeed + 1, i);
    const LengthStyle style = anyStyle(dice);
    const Made made = madeExpression(dice, style, 2, false);
    if (made.text.size() > 400) continue;
    const auto length = parseLength(made.text, style);
    INFO("seed " << kTextSeed + 1 << ", text " << i << ": " << made.text);
    if (!length) FAIL(length.faults().front().message);
    if (length.value().nanometres() != nearest(made)) FAIL("read as " << length.value().nanometres() << " nm");
  }
}

}  // namespace
}  // namespace ribwright::fuzz
