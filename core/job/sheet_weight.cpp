#include "core/job/sheet_weight.h"

namespace ribwright {

double steelKilogramsPerSquareMetre(Length thickness) { return thickness.inMetres() * steelKilogramsPerCubicMetre; }

double kilogramsPerSquareMetre(double poundsPerSquareFoot) {
  return poundsPerSquareFoot * 0.45359237 / (0.3048 * 0.3048);
}

double sheetKilograms(double developedWidth, Length length, Length thickness, int coatingGramsPerSquareMetre) {
  const double perSquareMetre = steelKilogramsPerSquareMetre(thickness) + coatingGramsPerSquareMetre / 1000.0;
  return developedWidth / 1000.0 * length.inMetres() * perSquareMetre;
}

}  // namespace ribwright
