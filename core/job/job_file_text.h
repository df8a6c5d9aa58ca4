// How single values are written in a job file, and how people are told about them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/units/angle.h"
#include "core/units/length.h"
#include "core/units/length_text.h"
#include "core/units/outcome.h"

namespace ribwright {

// Lengths carry a unit mark in a file ("7' 6\"", "2286 mm"), so that they mean the same whatever the job's units are.
// Text that a person could read either way is refused; "0" needs no mark. Range is not looked at.
Outcome<Length> fileLength(std::string_view text, UnitSystem units);

// "4:12", "150 in 250" (rise and run; bare numbers are inches or millimetres, whichever both are) or "9.5 deg".
// Written so that slopeFromText gives the same Slope back. Refused: falling, upright or steeper than 50 in 1 (89
// degrees).
std::string slopeText(const Slope& slope, UnitSystem units);
Outcome<Slope> slopeFromText(std::string_view text, UnitSystem units);

// Plain decimal degrees, at most six decimals: "9.5", "-0.25", "90". Fault: exponent, more decimals, beyond +-10^6
// degrees.
std::string degreesText(Angle angle);
Outcome<Angle> degreesFromText(std::string_view digits);

// A key as it stands in a path: bare when it is a plain word, else quoted.
std::string pathKey(std::string_view key);
// The candidate with the fewest letters to change (the first of equals); empty when there is none.
std::string_view nearestOf(std::string_view text, const std::vector<std::string_view>& candidates);
std::size_t characterCount(std::string_view utf8);

}  // namespace ribwright
