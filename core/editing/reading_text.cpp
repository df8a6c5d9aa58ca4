#include "core/editing/reading_text.h"

#include <string>

#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

constexpr std::string_view checkSigns[] = {"+-", "+/-", "\u00b1"};

std::string_view trimmed(std::string_view text) {
  const auto blank = [](char c) { return c == ' ' || c == '\t'; };
  while (!text.empty() && blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && blank(text.back())) text.remove_suffix(1);
  return text;
}

struct Halves {
  std::string_view height;
  std::optional<std::string_view> within;
};

Halves halvesOf(std::string_view text) {
  for (const std::string_view sign : checkSigns) {
    const auto at = text.find(sign);
    if (at != std::string_view::npos) return {trimmed(text.substr(0, at)), trimmed(text.substr(at + sign.size()))};
  }
  return {text, std::nullopt};
}

// As people read it where that says all of it, else to the nanometre.
std::string exactly(Length length, const LengthStyle& style) {
  const Length finest = style.units == UnitSystem::Millimetres ? Length::nanometres(100'000) : Length::sixtyFourths(1);
  if (rest(length, finest) == Length()) return fineText(length, style);
  return shownText(length, {UnitSystem::Millimetres, style.decimalSign}, 16, 6);
}

}  // namespace

Outcome<TypedReading> parseReading(std::string_view text, const LengthStyle& style,
                                   const std::optional<TypedReading>& before) {
  if (trimmed(text) == "=") {
    if (before) return *before;
    return Fault{"", "nothing was measured before this station; type the height"};
  }
  const Halves halves = halvesOf(trimmed(text));
  const Outcome<Length> height = parseLength(halves.height, style);
  if (!height) return height.faults();
  if (!halves.within) return TypedReading{height.value(), {}};
  const Outcome<Length> within = parseLength(*halves.within, style);
  if (!within) return within.faults();
  if (within.value() < Length())
    return Fault{"",
                 joined("\"", *halves.within, "\" is less than nothing; a stick check holds within 1/8 or the like")};
  return TypedReading{height.value(), within.value()};
}

std::string readingText(const TypedReading& reading, const LengthStyle& style) {
  std::string text = exactly(reading.height, style);
  if (reading.within) text += joined(" \u00b1 ", exactly(*reading.within, style));
  return text;
}

}  // namespace ribwright
