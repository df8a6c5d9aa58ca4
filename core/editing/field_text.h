// Values of fields as text that people type, and back to the same value.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/editing/typed_length.h"
#include "core/units/angle.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// As lengthStringText, a length in it that is no such text as typedLength.
std::string typedLengths(const std::vector<Length>& lengths, const LengthStyle& style);
// Plain decimal degrees with the job's own decimal sign.
std::string typedAngle(Angle angle, const LengthStyle& style);
std::string typedSlope(const Slope& slope, const LengthStyle& style);
std::string typedWholes(const std::vector<int>& wholes);
std::string typedLines(const std::vector<std::string>& lines);

// The other way; blanks round it do not count. Faults have an empty place; limits are not looked at.
Outcome<Angle> readAngle(std::string_view text, const LengthStyle& style);  // also with deg or °
Outcome<Slope> readSlope(std::string_view text, const LengthStyle& style);
Outcome<int> readWhole(std::string_view text);
Outcome<std::vector<int>> readWholes(std::string_view text);  // parted by commas, blanks or new lines
Outcome<bool> readFlag(std::string_view text);
std::vector<std::string> readLines(std::string_view text);  // blank lines left out

// Sound UTF-8 without anything cut short.
bool isSoundText(std::string_view text);

}  // namespace ribwright
