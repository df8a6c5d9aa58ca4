// What is understood. The forms are those of "Lengths" in the trade's drawings: each row is a worked example.
#include "tests/core/units/length_samples.h"

namespace ribwright {
namespace {

struct Understood {
  std::string_view text;
  Length length;
};

void understandsEach(std::initializer_list<Understood> rows, const LengthStyle& style) {
  for (const Understood& row : rows) {
    INFO(row.text);
    const auto found = parseLength(row.text, style);
    if (!found) FAIL_CHECK(found.faults().front().message);
    if (found) CHECK(found.value() == row.length);
  }
}

const Length kTwelveThreeAndHalf = Length::feet(12, 3, 32);

TEST_CASE("feet and inches with their marks mean the same whatever the default unit") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"12' 3-1/2\"", kTwelveThreeAndHalf},
            {"12'3-1/2\"", kTwelveThreeAndHalf},
            {"12' 3 1/2\"", kTwelveThreeAndHalf},
            {"12' 3.5\"", kTwelveThreeAndHalf},
            {"12 ft 3.5 in", kTwelveThreeAndHalf},
            {"12ft3.5in", kTwelveThreeAndHalf},
            {"12 FT 3-1/2 IN", kTwelveThreeAndHalf},
            {"12 feet 3.5 inches", kTwelveThreeAndHalf},
            {"1 foot 1 inch", Length::inches(13)},
            {"12 ft. 3.5 in.", kTwelveThreeAndHalf},
            {"  12'  3-1/2\"  ", kTwelveThreeAndHalf},
            {"12'", Length::feet(12)},
            {"12.5'", Length::feet(12, 6)},
            {"12 1/2 ft", Length::feet(12, 6)},
            {"6\"", Length::inches(6)},
            {"3-1/2\"", Length::inches(3, 32)},
            {"3 1/2\"", Length::inches(3, 32)},
            {"3/4\"", Length::inches(0, 48)},
            {"5/4\"", Length::inches(1, 16)},
            {"12' 0\"", Length::feet(12)},
            {"12' 0-3/4\"", Length::feet(12, 0, 48)},
            {"12' 3/4\"", Length::feet(12, 0, 48)},
            {"12' 06\"", Length::feet(12, 6)},
            {"0' 158-1/2\"", Length::inches(158, 32)},
            {".5\"", Length::inches(0, 32)},
        },
        style);
}

TEST_CASE("a number alone has the default unit") {
  understandsEach({{"147.5", kTwelveThreeAndHalf}, {"0", Length()}, {"3/4", Length::inches(0, 48)}}, kFeetInches);
  understandsEach({{"3750", Length::millimetres(3750)}, {"0.000001", Length::nanometres(1)}}, kMillimetres);
}

TEST_CASE("a suffix beats the default unit") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"3750 mm", Length::millimetres(3750)},
            {"3750mm", Length::millimetres(3750)},
            {"375 cm", Length::millimetres(3750)},
            {"3.75 m", Length::millimetres(3750)},
            {"3.75M", Length::millimetres(3750)},
            {"1/2 mm", Length::nanometres(500'000)},
            {"0.000001 mm", Length::nanometres(1)},
            {"0.000000001 m", Length::nanometres(1)},
            {"36 in", Length::nanometres(914'400'000)},
        },
        style);
}

// "12-3.5 (feet-inches; 3-1/2 is inches)", "12' - 6" is drawing style for 12 ft 6".
TEST_CASE("a dash joins feet and inches, or inches and their fraction") {
  understandsEach(
      {
          {"12-3.5", kTwelveThreeAndHalf},
          {"12-3-1/2", kTwelveThreeAndHalf},
          {"12-3 1/2", kTwelveThreeAndHalf},
          {"12-0", Length::feet(12)},
          {"12-11", Length::feet(12, 11)},
          {"12-0-1/2", Length::feet(12, 0, 32)},
          {"3-1/2", Length::inches(3, 32)},
          {"12-1/2", Length::inches(12, 32)},
          {"12'-6", Length::feet(12, 6)},
          {"12' 3", Length::feet(12, 3)},
          {"12' 3-1/2", kTwelveThreeAndHalf},
      },
      kFeetInches);
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"12' - 6\"", Length::feet(12, 6)},
            {"12'-6\"", Length::feet(12, 6)},
            {"12' -6\"", Length::feet(12, 6)},
            {"12'- 6\"", Length::feet(12, 6)},
            {"12 ft - 6 in", Length::feet(12, 6)},
            {"12' - 3-1/2\"", kTwelveThreeAndHalf},
            {"12'-3-1/2\"", kTwelveThreeAndHalf},
            {"12'-0\"", Length::feet(12)},
        },
        style);
}

TEST_CASE("typographic marks, dashes, spaces and fractions are the plain ones") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"12′ 3-1/2″", kTwelveThreeAndHalf},
            {"12’ 3-1/2”", kTwelveThreeAndHalf},
            {"12‘ 3-1/2“", kTwelveThreeAndHalf},
            {"12' 3-1/2''", kTwelveThreeAndHalf},
            {"12′ 3–1⁄2′′", kTwelveThreeAndHalf},
            {"12' 3½\"", kTwelveThreeAndHalf},
            {"12' 3-½\"", kTwelveThreeAndHalf},
            {"12' 3 ½\"", kTwelveThreeAndHalf},
            {"½\"", Length::inches(0, 32)},
            {"2⅝\"", Length::inches(2, 40)},
            {"12'\u00a03\u202f1/2\u2009in", kTwelveThreeAndHalf},
            {"12'\t3-1/2\"", kTwelveThreeAndHalf},
            {"−1-3/4\"", -Length::inches(1, 48)},
            {"2×3'", Length::feet(6)},
            {"6'÷2", Length::feet(3)},
        },
        style);
}

TEST_CASE("a leading sign is for the whole length and is never dropped") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"-1-3/4\"", -Length::inches(1, 48)},
            {"- 1-3/4\"", -Length::inches(1, 48)},
            {"-12' 6\"", -Length::feet(12, 6)},
            {"-12' - 6\"", -Length::feet(12, 6)},
            {"+12' 6\"", Length::feet(12, 6)},
            {"-0\"", Length()},
            {"-(12' 6\")", -Length::feet(12, 6)},
            {"-2' + 6\"", -Length::inches(18)},
            {"-2 * 3'", -Length::feet(6)},
            {"(-3\" + 1') * 2", Length::inches(18)},
            {"2 * (-3\")", -Length::inches(6)},
        },
        style);
  understandsEach({{"-12-3.5", -kTwelveThreeAndHalf}, {"-3-1/2", -Length::inches(3, 32)}}, kFeetInches);
  understandsEach({{"-44.45", -Length::inches(1, 48)}}, kMillimetres);
}

TEST_CASE("plus, times, divided by and parentheses work everywhere") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"12' + 6\"", Length::feet(12, 6)},
            {"12' 3\" + 1/2\"", kTwelveThreeAndHalf},
            {"1 m + 1'", Length::millimetres(1000) + Length::feet(1)},
            {"14 * 36\"", Length::feet(42)},
            {"36\" * 14", Length::feet(42)},
            {"2 * 3 * 4'", Length::feet(24)},
            {"2' + 3 * 4'", Length::feet(14)},
            {"(2' + 3') * 4", Length::feet(20)},
            {"2*(3'+(1'+6\")*2)", Length::feet(12)},
            {"40' / 2", Length::feet(20)},
            {"1/2 * 12'", Length::feet(6)},
            {"12' * 3/4", Length::feet(9)},
            {"12' / (1/2)", Length::feet(24)},
            {"40'/2 + 1-3/4\"", Length::feet(20, 1, 48)},
            {"(12' 3-1/2\" + 12' 4-1/4\") / 2", Length::feet(12, 3, 56)},
        },
        style);
  understandsEach({{"147.5 + 3", Length::inches(150, 32)},
                   {"12*12", Length::feet(12)},
                   {"12' / 2 1/2 * 5", Length::feet(24)},
                   {"100/8", Length::inches(12, 32)}},
                  kFeetInches);
  understandsEach({{"3000/4 + 0.5", Length::nanometres(750'500'000)}}, kMillimetres);
}

TEST_CASE("minus subtracts inside parentheses") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"(12' - 6\")", Length::feet(11, 6)},
            {"(40' - 2 * 6\") / 2", Length::feet(19, 6)},
            {"(12' - 3')", Length::feet(9)},
            {"(12'-3')", Length::feet(9)},
            {"(12\"-3\")", Length::inches(9)},
            {"(3\" - 1')", -Length::inches(9)},
            {"(12'-14\")", Length::feet(10, 10)},
            {"(12' - 3-1/2\")", Length::feet(11, 8, 32)},
            {"(12' - (6\" - 1\"))", Length::feet(11, 7)},
        },
        style);
  understandsEach({{"(12 - 3)", Length::inches(9)},
                   {"(147.5-3)", Length::inches(144, 32)},
                   {"(144-16)/2", Length::inches(64)},
                   {"(100-25/2)", Length::inches(87, 32)},
                   {"(12 - 1/2)", Length::inches(11, 32)}},
                  kFeetInches);
  // No dash form has a meaning here without marks, so a tight minus can only subtract.
  understandsEach({{"(3750-25)", Length::millimetres(3725)}, {"(12-1/2)", Length::nanometres(11'500'000)}},
                  kMillimetres);
}

TEST_CASE("a decimal comma is one where the style says so") {
  understandsEach({{"12,3", Length::nanometres(12'300'000)},
                   {"3,75 m", Length::millimetres(3750)},
                   {"1,000", Length::millimetres(1)},
                   {"12' 3,5\"", kTwelveThreeAndHalf},
                   {"12,3 + 0,7", Length::millimetres(13)}},
                  kMillimetresComma);
  understandsEach({{"147,5", kTwelveThreeAndHalf}, {"12-3,5", kTwelveThreeAndHalf}, {"12-3-1/2", kTwelveThreeAndHalf}},
                  kFeetInchesComma);
}

// ASTM E29 section 6: half to even; what is reckoned exactly is not rounded on the way.
TEST_CASE("only the end of a reckoning is rounded, half to even") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    understandsEach(
        {
            {"25' / 3", Length::nanometres(2'540'000'000)},
            {"10' / 3 * 3", Length::feet(10)},
            {"1\" / 3", Length::nanometres(8'466'667)},
            {"0.000005 mm / 2", Length::nanometres(2)},
            {"0.000007 mm / 2", Length::nanometres(4)},
            {"-0.000005 mm / 2", Length::nanometres(-2)},
            {"0.000001 mm / 2 + 0.000001 mm / 2", Length::nanometres(1)},
            {"1/3 in", Length::nanometres(8'466'667)},
        },
        style);
}

// Tables print inches with at most nine decimals; they read back the same nanometre.
TEST_CASE("decimals of inches and feet are read to the nearest nanometre, up to nine of them") {
  understandsEach({{"0.33333335", Length::nanometres(8'466'667)},
                   {"0.00000004 in", Length::nanometres(1)},
                   {"0.015625", Length::sixtyFourths(1)},
                   {"147.63779528", Length::millimetres(3750)},
                   {"0.333333333 ft", Length::nanometres(101'600'000)}},
                  kFeetInches);
}

TEST_CASE("the whole range of lengths can be written") {
  understandsEach({{"9223372036854.775807", Length::nanometres(INT64_MAX)},
                   {"-9223372036854.775808 mm", Length::nanometres(INT64_MIN)}},
                  kMillimetres);
}

}  // namespace
}  // namespace ribwright
