// What a person types for how far a roof rises: a slope, or the height that it rises to.
#pragma once

#include <string_view>
#include <variant>

#include "core/units/angle.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// 4:12, 150 in 250, 9.5 deg, 9.5°. All else is read as a height.
bool isSlopeText(std::string_view text);

// Faults: as parseLength and the job file's slopes.
Outcome<std::variant<Slope, Length>> parseRise(std::string_view text, const LengthStyle& style);

}  // namespace ribwright
