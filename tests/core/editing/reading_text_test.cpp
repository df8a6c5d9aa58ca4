// What someone types while another reads the tape aloud.
#include "core/editing/reading_text.h"

#include <catch2/catch.hpp>

#include "tests/core/editing/length_styles.h"
#include "tests/core/tape_lengths.h"

using namespace ribwright;

namespace {

TypedReading read(std::string_view text, const std::optional<TypedReading>& before = {}) {
  const auto typed = parseReading(text, feetInches, before);
  INFO(text);
  REQUIRE(typed);
  return typed.value();
}

}  // namespace

TEST_CASE("a height is typed as any length is, arithmetic and all") {
  CHECK(read("88-1/2") == TypedReading{in(88, 8), {}});
  CHECK(read(" 7' 4-1/2\" ") == TypedReading{in(88, 8), {}});
  CHECK(read("80 + 8-1/2") == TypedReading{in(88, 8), {}});
  CHECK(read("(90 - 1.5)") == TypedReading{in(88, 8), {}});
  CHECK(read("-1/8") == TypedReading{-in(0, 2), {}});
}

// A stick check is an interval.
TEST_CASE("a stick check is typed with what it holds within, in three ways to write it") {
  for (const char* text : {"88-1/2 +- 1/8", "88-1/2+/-1/8", "88-1/2 \u00b1 1/8\""})
    CHECK(read(text) == TypedReading{in(88, 8), in(0, 2)});
  CHECK(read("88-1/2 +- 0") == TypedReading{in(88, 8), Length()});
}

TEST_CASE("a sign of equality says the reading before over again, stick check and all") {
  const TypedReading before{in(88, 8), in(0, 2)};
  CHECK(read(" = ", before) == before);
  CHECK_FALSE(parseReading("=", feetInches, {}));
}

TEST_CASE("what is no reading is refused with a word about it") {
  for (const char* text : {"", "88 fo", "88-1/2 +-", "+- 1/8", "88 +- -1/8", "88 +- 1/8 +- 1/8", "= 3"}) {
    const auto typed = parseReading(text, feetInches, TypedReading{in(88), {}});
    INFO(text);
    REQUIRE_FALSE(typed);
    CHECK_FALSE(typed.faults().front().message.empty());
  }
}

TEST_CASE("what is shown of a reading reads back as the same, to the nanometre") {
  const Length heights[] = {in(88, 8), Length::inches(88, 9), Length::nanometres(2'247'900'001), -in(0, 2), Length()};
  for (const LengthStyle& style : {feetInches, metric}) {
    for (const Length height : heights) {
      for (const auto& within : {std::optional<Length>(), std::optional<Length>(in(0, 2))}) {
        const TypedReading reading{height, within};
        const std::string shown = readingText(reading, style);
        INFO(shown);
        const auto again = parseReading(shown, style, {});
        REQUIRE(again);
        CHECK(again.value() == reading);
      }
    }
  }
  CHECK(readingText({in(88, 8), in(0, 2)}, feetInches) == "7' 4-1/2\" \u00b1 1/8\"");
  CHECK(readingText({Length::millimetres(2248), {}}, metric) == "2248 mm");
}
