// What a sheet weighs. Weights are doubles: they are printed and compared with limits, and never decide where metal is.
#pragma once

#include "core/job/profile.h"
#include "core/units/length.h"

namespace ribwright {

// EN 1991-1-1 Table A.4 gives steel 77.0 to 78.5 kN/m3; practice takes 7850 kg/m3.
constexpr int steelKilogramsPerCubicMetre = 7850;

// Bare flat steel of a thickness, kg/m2.
double steelKilogramsPerSquareMetre(Length thickness);

// From pounds a square foot to kg/m2 (1 lb = 0.45359237 kg: Federal Register, 1 July 1959).
double kilogramsPerSquareMetre(double poundsPerSquareFoot);

// A full-width sheet, in kg: developed width x length x (base thickness x 7850 kg/m3 + coating).
// `developedWidth` in mm as sectionOf gives it; `thickness` of the base steel, which a band may state other than the
// profile does.
double sheetKilograms(double developedWidth, Length length, Length thickness, int coatingGramsPerSquareMetre);

}  // namespace ribwright
