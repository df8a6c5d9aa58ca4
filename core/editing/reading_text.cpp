#include "core/editing/reading_text.h"

#include <string>

#include "core/editing/typed_length.h"
#include "core/job/job_file_joined.h"

namespace ribwright {
namespace {

constexpr std::string_view checkSigns[] = {"+-", "+/-", "\u00b1"};

struct Halves {
  std::string_view height;
  std::optional<std::string_view> within;
};

Halves halvesOf(std::string_view text) {
  for (const std::string_view sign : checkSigns) {
    const auto at = text.find(sign);
    if (at != std::string_view::npos)
      return {withoutBlanks(text.substr(0, at)), withoutBlanks(text.substr(at + sign.size()))};
  }
  return {text, std::nullopt};
}

}  // namespace

Outcome<TypedReading> parseReading(std::string_view text, const LengthStyle& style,
                                   const std::optional<TypedReading>& before) {
  if (withoutBlanks(text) == "=") {
    if (before) return *before;
    return Fault{"", "nothing was measured before this station; type the height"};
  }
  const Halves halves = halvesOf(withoutBlanks(text));
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
  std::string text = typedLength(reading.height, style);
  if (reading.within) text += joined(" \u00b1 ", typedLength(*reading.within, style));
  return text;
}

}  // namespace ribwright
