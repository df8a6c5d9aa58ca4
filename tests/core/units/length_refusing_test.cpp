// What is refused, and how it is said: the text back, the reason, the remedy.
#include <algorithm>

#include "tests/core/units/length_samples.h"

namespace ribwright {
namespace {

struct Refused {
  std::string_view text;
  std::string_view reason;  // a part of it
};

void refusesEach(std::initializer_list<Refused> rows, const LengthStyle& style) {
  for (const Refused& row : rows) {
    INFO(row.text);
    const std::string message = faultOf(row.text, style);
    CHECK_THAT(message, Catch::StartsWith(std::string("\"").append(row.text).append("\" is no length")));
    CHECK_THAT(message, Catch::Contains(std::string(row.reason)));
  }
}

TEST_CASE("the refusal says the text, then what would be right") {
  CHECK(faultOf("7 fo", kFeetInches) == "\"7 fo\" is no length; write 7' 6\", 7 ft 6 in or 2286 mm");
  CHECK(faultOf("7 fo", kMillimetres) == "\"7 fo\" is no length; write 2286, 2286 mm or 7' 6\"");
  CHECK(faultOf("12 3", kFeetInches) ==
        "\"12 3\" is no length: two numbers stand side by side; write a mark or a sign between them, as 12' 6\" or "
        "12 + 6");
}

TEST_CASE("nothing, a word or a stray sign is no length") {
  for (const LengthStyle& style : kStyles)
    for (const std::string_view text :
         {"",        " ",        "ft",   "'",       "\"",   "-",   "+",    "*",    "/",       "(",       ")",
          "()",      "abc",      "7 fo", "12' six", "12x3", "1e3", "0x10", "inf",  "nan",     "12'6\"x", "12' 6\" 3/4",
          "3\" 1/2", "1' 2' 3'", "3 m2", "12 'ft",  "é",    "12°", "$12",  "3@4'", "+ 3'' +", "(3') 4",  "(3) ft",
          "12'''",   "3 mm mm",  "--3",  "+-3",     "3..5", "1/",  "1/2/", "/2",   "3 //2",   "1''' "}) {
      INFO(text);
      CHECK(faultOf(text, style) != "");
    }
}

TEST_CASE("grouped thousands and the wrong decimal sign are refused, never guessed") {
  refusesEach({{"1,000", "a comma is no decimal sign here"},
               {"12,3", "write 1000 or 1.5"},
               {"1,234.5", "thousands stand without a separator"},
               {"1 000", "two numbers stand side by side"},
               {"1'000", "less than 12"},
               {"1'250", "less than 12"}},
              kFeetInches);
  refusesEach({{"1,000", "a comma"}, {"1 000", "two numbers"}, {"1'000", "no mark"}, {"1 000.5", "two numbers"}},
              kMillimetres);
  refusesEach({{"1.000,5", "a point is no decimal sign here"}, {"12.5", "write 1000 or 1,5"}, {"1.000", "a point"}},
              kMillimetresComma);
  refusesEach({{"12.5", "a point"}, {"12-3.5", "a point"}}, kFeetInchesComma);
}

TEST_CASE("dash forms without a mark are refused among millimetres") {
  refusesEach({{"12-3.5", "lengths here are millimetres"},
               {"12-3-1/2", "lengths here are millimetres"},
               {"3-1/2", "lengths here are millimetres"},
               {"3-1/2 mm", "lengths here are millimetres"},
               {"12-3\"", "lengths here are millimetres"},
               {"12'-6", "the inches behind the feet have no mark"},
               {"12' 6", "the inches behind the feet have no mark"},
               {"3 1/2", "a mixed fraction has no mark"},
               {"3½", "a mixed fraction has no mark"}},
              kMillimetres);
}

TEST_CASE("minus outside parentheses is refused") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"12 - 3", "minus subtracts only inside parentheses"},
                 {"12' 6\" - 2\"", "minus subtracts only inside parentheses"},
                 {"12' - 3'", "minus subtracts only inside parentheses"},
                 {"12' - 50 mm", "minus subtracts only inside parentheses"},
                 {"12.5' - 6\"", "minus subtracts only inside parentheses"},
                 {"12' - 14\"", "minus subtracts only inside parentheses"},
                 {"147.5-3", "minus subtracts only inside parentheses"},
                 {"(12') - 6\"", "minus subtracts only inside parentheses"},
                 {"3750 mm - 25 mm", "minus subtracts only inside parentheses"}},
                style);
}

TEST_CASE("a dash in parentheses that could join or subtract is refused") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"(12'-6\")", "could join or subtract"},
                 {"(12' -6\")", "could join or subtract"},
                 {"(12'- 6\")", "could join or subtract"},
                 {"2*(1'+(12'-6\"))", "could join or subtract"}},
                style);
  refusesEach({{"(12-3)", "could join or subtract"},
               {"(12-3.5)", "could join or subtract"},
               {"(12-3-1/2)", "could join or subtract"},
               {"(3-1/2)", "could join or subtract"},
               {"(12'-6)", "could join or subtract"}},
              kFeetInches);
}

TEST_CASE("a point between a unit and a digit is refused: it could end the one or begin the other") {
  for (const LengthStyle& style : kStyles)
    refusesEach({{"12 ft.6 in", "end the unit or begin a decimal"}, {"6 in.5", "end the unit or begin a decimal"}},
                style);
  CHECK(read("12 ft .5 in", kFeetInches) == Length::feet(12, 0, 32));
}

TEST_CASE("feet and inches that do not fit together are refused") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"12.5' 3\"", "feet before inches must be a whole number"},
                 {"1/2' 3\"", "feet before inches must be a whole number"},
                 {"12' 50 mm", "only inches stand behind feet"},
                 {"12' 3'", "only inches stand behind feet"},
                 {"12' 5/4\"", "less than 1 in"},
                 {"3 5/4\"", "less than 1"}},
                style);
  refusesEach({{"12' 14", "less than 12"},
               {"12' 006", "less than 12"},
               {"12-13", "less than 12"},
               {"12-12.0", "less than 12"},
               {"12-5/4", "less than 1"},
               {"12-3\"", "mark both or none"}},
              kFeetInches);
}

TEST_CASE("what has no meaning as a length is refused") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"10' * 10'", "is an area"},
                 {"2' * 3\" * 2", "is an area"},
                 {"10' / 2'", "what is divided by a length is no length"},
                 {"10 / 2'", "what is divided by a length is no length"},
                 {"10'/0", "nothing can be divided by 0"},
                 {"10'/(1 - 1)", "nothing can be divided by 0"},
                 {"1/0", "nothing can be divided by 0"},
                 {"1/0\"", "nothing can be divided by 0"},
                 {"12'/3/4", "not clear what the second / divides"},
                 {"12' / 1/2", "not clear what the second / divides"},
                 {"2 * -3'", "needs parentheses"},
                 {"3' + -1'", "needs parentheses"},
                 {"((3')", "not closed"},
                 {"5.", "ends with its decimal sign"},
                 {"5. ft", "ends with its decimal sign"}},
                style);
}

TEST_CASE("finer than a nanometre is refused, not rounded in silence") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"0.0000001 mm", "finer than a nanometre"},
                 {"0.00000001 cm", "finer than a nanometre"},
                 {"0.0000000001 m", "finer than a nanometre"},
                 {"0.3333333333 in", "finer than a nanometre"},
                 {"0.3333333333 ft", "finer than a nanometre"}},
                style);
  refusesEach({{"0.0000001", "finer than a nanometre"}, {"1 + 0.0000001", "finer than a nanometre"}}, kMillimetres);
  CHECK(read("2.50000000000 mm", kMillimetres) == Length::nanometres(2'500'000));
}

TEST_CASE("what leaves the range is refused and never clamped") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres})
    refusesEach({{"9223372036854.775808 mm", "out of range"},
                 {"-9223372036854.775809 mm", "out of range"},
                 {"99999999999 ft", "out of range"},
                 {"999999999999999999 m", "out of range"},
                 {"9000000000 m + 9000000000 m", "out of range"},
                 {"999999999999999999 * 999999999999999999 * 999999999999999999", "out of range"},
                 {"1/999999999999999999+1/999999999999999998+1/99999999999", "out of range"},
                 {"1234567890123456789", "more than 18 digits"},
                 {"0.1234567890123456789", "more than 18 digits"}},
                style);
}

TEST_CASE("deep parentheses and long text end in a refusal, not in a crash") {
  const auto nested = [](std::size_t levels) {
    std::string text(levels, '(');
    text.append("3'").append(levels, ')');
    return text;
  };
  CHECK_THAT(faultOf(nested(150), kFeetInches), Catch::Contains("more than 20 parentheses"));
  CHECK(read(nested(20), kFeetInches) == Length::feet(3));
  const std::string longSum = "1'" + std::string(500, ' ') + "+ 1'";
  CHECK_THAT(faultOf(longSum, kFeetInches), Catch::Contains("longer than 400 characters"));
  CHECK(faultOf(std::string(100'000, '('), kFeetInches).size() < 200);
}

TEST_CASE("whatever was typed is said back in one sound line") {
  const std::string message = faultOf("a\nb\xff\xc3 \xe2\x82", kFeetInches);
  CHECK_THAT(message, Catch::StartsWith("\"a b?? ??\" is no length"));
  // Cut short, too long for what it says, half of a pair, beyond the last character: each byte is said as ?
  for (const std::string broken : {"\xe2\x82", "\xc0\xaf", "\xe0\x80\x80", "\xed\xa0\x80", "\xf0\x80\x80\x80",
                                   "\xf4\x90\x80\x80", "\xf5\x80\x80\x80"})
    CHECK_THAT(faultOf(broken, kFeetInches), Catch::StartsWith('"' + std::string(broken.size(), '?') + '"'));
  CHECK_THAT(faultOf("zwölf Fuß", kMillimetres), Catch::StartsWith("\"zwölf Fuß\" is no length"));
  CHECK(std::all_of(message.begin(), message.end(), [](char c) { return c >= ' ' && c <= '~'; }));
}

}  // namespace
}  // namespace ribwright
