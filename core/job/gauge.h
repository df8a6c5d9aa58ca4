// Sheet gauges. A gauge says nothing without its system: "26 gauge" is three thicknesses, so a job stores the thickness
// and the gauge serves only to find it.
//
// A gauge is a weight of a square foot; each system turns that weight into a thickness in its own way.
#pragma once

#include <optional>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

enum class GaugeSystem {
  UnitedStatesStandard,   // 15 U.S.C. 206 (Act of 3 March 1893): wrought iron, 40 lb/ft2 an inch
  ManufacturersStandard,  // Manufacturers' Standard Gage: bare steel, 41.82 lb/ft2 an inch
  GalvanizedSheet,        // Galvanized Sheet Gage: over the coating, which counts as steel and weighs 2.5 oz/ft2
};

// Thickness of the sheet, rounded half to even to the nanometre; with GalvanizedSheet the coating is in it. Absent for
// a gauge that the table does not hold.
std::optional<Length> gaugeThickness(GaugeSystem system, int gauge);

// Pounds a square foot, exact in binary; with GalvanizedSheet the coating is in it.
std::optional<double> gaugePoundsPerSquareFoot(GaugeSystem system, int gauge);

// The gauges that the tables hold, rising.
std::vector<int> knownGauges();

}  // namespace ribwright
