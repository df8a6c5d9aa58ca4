// Figures of tables and pages, in the units of a job: feet and pounds, or metres and kilograms. '.' always, no
// grouping.
#pragma once

#include <string>
#include <vector>

#include "core/units/area.h"
#include "core/units/length.h"
#include "core/units/length_text.h"

namespace ribwright {

// Inches or millimetres: the shortest text that reads back the same nanometre.
std::string smallLength(Length length, UnitSystem units);
// Feet or metres, as short as that too (at most 9 decimals).
std::string largeLength(Length length, UnitSystem units);
// Square feet or square metres with two decimals, half to even, exact.
std::string areaText(Area area, UnitSystem units);
// Pounds (0.45359237 kg, the international avoirdupois pound of 1959) or kilograms with one decimal.
std::string weightText(double kilograms, UnitSystem units);
// Marks in one cell, a space between two; empty ones are left out.
std::string spaced(const std::vector<std::string>& marks);

}  // namespace ribwright
