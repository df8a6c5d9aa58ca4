// Strings of bays and girt spacings in one field.
#include <random>

#include "tests/core/units/length_samples.h"

namespace ribwright {
namespace {

using Lengths = std::vector<Length>;

Lengths list(std::string_view text, const LengthStyle& style) {
  const auto lengths = parseLengthString(text, style);
  if (!lengths) FAIL(lengths.faults().front().message);
  return lengths.value();
}

std::vector<std::string> faults(std::string_view text, const LengthStyle& style) {
  const auto lengths = parseLengthString(text, style);
  std::vector<std::string> messages;
  if (!lengths)
    for (const Fault& fault : lengths.faults()) messages.push_back(oneLine(fault));
  return messages;
}

// The rules of paper and screen "Lengths": 20', 4@25', 20'
TEST_CASE("a string of bays: 20', 4@25', 20'") {
  const Lengths bays{Length::feet(20), Length::feet(25), Length::feet(25),
                     Length::feet(25), Length::feet(25), Length::feet(20)};
  for (const LengthStyle& style : {kFeetInches, kMillimetres}) {
    CHECK(list("20', 4@25', 20'", style) == bays);
    CHECK(list("20',4 @ 25',20'", style) == bays);
    CHECK(list("20'; 4@25'; 20'", style) == bays);
    CHECK(list("20',\n4@25',\n20'", style) == bays);
    CHECK(list("20'\t4@25'\t20'", style) == bays);
  }
  CHECK(list("20'; 4@25'; 20'", kFeetInchesComma) == bays);
  CHECK(lengthStringText(bays, kFeetInches) == "20' 0\", 4@25' 0\", 20' 0\"");
  CHECK(lengthStringText(bays, kMillimetresComma) == "6096 mm; 4@7620 mm; 6096 mm");
}

TEST_CASE("a pasted column of numbers, whatever ends its lines") {
  const Lengths girts{Length::inches(84), Length::inches(60), Length::inches(48, 32)};
  CHECK(list("84\n60\n48.5\n", kFeetInches) == girts);
  CHECK(list("84\r\n60\r\n48.5\r\n", kFeetInches) == girts);
  CHECK(list("84\n60\n48,5", kFeetInchesComma) == girts);
  CHECK(list("6000\n7500,5", kMillimetresComma) ==
        Lengths{Length::millimetres(6000), Length::nanometres(7'500'500'000)});
}

TEST_CASE("an item may be reckoned") {
  CHECK(list("(20' - 6\"), 2@(40'/3), 7-6", kFeetInches) ==
        Lengths{Length::feet(19, 6), Length::feet(13, 4), Length::feet(13, 4), Length::feet(7, 6)});
}

TEST_CASE("an empty field holds no lengths") {
  CHECK(list("", kFeetInches).empty());
  CHECK(list(" \r\n ", kMillimetresComma).empty());
  CHECK(lengthStringText({}, kFeetInches).empty());
}

TEST_CASE("every item that cannot be read is named") {
  const auto messages = faults("20', 7 fo, 25', 3@x", kFeetInches);
  REQUIRE(messages.size() == 2);
  CHECK(messages[0] == "item 2: \"7 fo\" is no length; write 7' 6\", 7 ft 6 in or 2286 mm");
  CHECK_THAT(messages[1], Catch::StartsWith("item 4: \"x\" is no length"));
}

TEST_CASE("a missing item is not passed over in silence") {
  for (const std::string_view text : {"20',,25'", ",20'", "20',", "20';;25'", "20'\n\n25'", "20', , 25'", ","})
    CHECK_FALSE(faults(text, kFeetInches).empty());
}

TEST_CASE("a count is a whole number from 1 to 10000") {
  for (const std::string_view text :
       {"0@5'", "-1@5'", "1.5@5'", "@5'", "2@", "2@3@5'", "10001@5'", "5'@2", "99999999999999999999999@5'", "1e2@5'"}) {
    INFO(text);
    CHECK(faults(text, kFeetInches).size() == 1);
  }
  CHECK(list("10000@5'", kFeetInches).size() == 10'000);
  CHECK_THAT(faults("10000@5', 1'", kFeetInches).at(0), Catch::Contains("more than 10000 lengths"));
}

TEST_CASE("a comma that could group thousands is refused") {
  for (const LengthStyle& style : {kFeetInches, kMillimetres}) {
    CHECK_THAT(faults("1,000", style).at(0), Catch::Contains("could group thousands"));
    CHECK_THAT(faults("150,300,150", style).at(0), Catch::Contains("write a space behind each comma"));
    CHECK(list("150, 300, 150", style).size() == 3);
  }
  CHECK(list("6000,7500,6000", kMillimetres).size() == 3);
  CHECK(list("6000,750", kMillimetres).size() == 2);
  CHECK(list("20',250", kFeetInches).size() == 2);
}

TEST_CASE("what a list writes, it reads") {
  std::mt19937_64 random(3);
  std::uniform_int_distribution<int> count(0, 12);
  std::uniform_int_distribution<std::int64_t> sixtyFourths(-100'000, 100'000);
  for (int i = 0; i < 5'000; ++i) {
    Lengths lengths;
    while (lengths.size() < static_cast<std::size_t>(count(random))) {
      Length length = Length::sixtyFourths(sixtyFourths(random));
      if (count(random) == 0) length += Length::nanometres(1);
      lengths.insert(lengths.end(), static_cast<std::size_t>(1 + count(random) / 5), length);
    }
    for (const LengthStyle& style : kStyles) {
      const std::string text = lengthStringText(lengths, style);
      INFO(text);
      CHECK(list(text, style) == lengths);
      CHECK(lengthStringText(list(text, style), style) == text);
    }
  }
}

}  // namespace
}  // namespace ribwright
