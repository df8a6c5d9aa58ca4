#include "core/job/gauge.h"

namespace ribwright {
namespace {

struct GaugeRow {
  int gauge;
  int ouncesPerSquareFoot;  // of bare sheet: 15 U.S.C. 206; both steel systems took its weights over
};

constexpr GaugeRow gaugeRows[] = {{16, 40}, {18, 32}, {20, 24}, {22, 20}, {24, 16}, {25, 14},
                                  {26, 12}, {27, 11}, {28, 10}, {29, 9},  {30, 8}};

constexpr int coatingHalfOunces = 5;  // Galvanized Sheet Gage: 2.5 oz/ft2

// In half ounces a square foot, so that 2.5 oz is whole.
std::optional<int> halfOunces(GaugeSystem system, int gauge) {
  for (const GaugeRow& row : gaugeRows) {
    if (row.gauge != gauge) continue;
    return 2 * row.ouncesPerSquareFoot + (system == GaugeSystem::GalvanizedSheet ? coatingHalfOunces : 0);
  }
  return std::nullopt;
}

}  // namespace

std::optional<Length> gaugeThickness(GaugeSystem system, int gauge) {
  const auto weight = halfOunces(system, gauge);
  if (!weight) return std::nullopt;
  // 32 half ounces are a pound; an inch weighs 40 or 41.82 lb/ft2.
  const int hundredthsOfPoundPerInch = system == GaugeSystem::UnitedStatesStandard ? 4000 : 4182;
  return scaled(Length::inches(1), *weight * 100, 32 * hundredthsOfPoundPerInch);
}

std::optional<double> gaugePoundsPerSquareFoot(GaugeSystem system, int gauge) {
  const auto weight = halfOunces(system, gauge);
  if (!weight) return std::nullopt;
  return *weight / 32.0;
}

std::vector<int> knownGauges() {
  std::vector<int> gauges;
  for (const GaugeRow& row : gaugeRows) gauges.push_back(row.gauge);
  return gauges;
}

}  // namespace ribwright
