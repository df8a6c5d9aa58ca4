// What a person types for a reading of the tape.
#pragma once

#include <optional>
#include <string_view>

#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

struct TypedReading {
  Length height;
  std::optional<Length> within;  // a stick check: anywhere in height +- within
  bool operator==(const TypedReading&) const = default;
};

// A length as parseLength reads it: 88-1/2, 7' 4-1/2", 80 + 8-1/2; with +-, +/- or ± and a second length a stick check
// within that: 88-1/2 +- 1/8. "=" alone says the reading before over again. Blanks round it do not count.
// Faults: text that is no length, "=" with nothing before, a check within less than nothing.
Outcome<TypedReading> parseReading(std::string_view text, const LengthStyle& style,
                                   const std::optional<TypedReading>& before);

// What parseReading reads back as the same, to the nanometre: as fineText where that says all of it, else millimetres.
std::string readingText(const TypedReading& reading, const LengthStyle& style);

}  // namespace ribwright
