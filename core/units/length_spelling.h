// The ways people spell the same mark, and how a refusal is worded. Used by the readers of length_text.h.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/units/length_text.h"

namespace ribwright {

// The text with prime and curly marks as ' and ", typographic dashes and the minus sign as -, typographic fractions as
// 1/2, fixed and thin spaces as a space, x and division signs as * and /. Nothing when a character has no meaning in a
// length.
std::optional<std::string> plainSpelling(std::string_view text);

// `"7 fo" is no length; write 7' 6", 7 ft 6 in or 2286 mm`, or with a reason that brings its own remedy
// `"12 3" is no length: two numbers stand side by side; ...`. The place stays empty. Long text is shortened.
Fault noLength(std::string_view text, const LengthStyle& style, const std::string& reason);

}  // namespace ribwright
