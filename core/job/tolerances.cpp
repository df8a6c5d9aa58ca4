#include "core/job/tolerances.h"

namespace ribwright {
namespace {

constexpr Length micrometres(std::int64_t count) { return Length::nanometres(1000) * count; }

// Above the row before, up to and with `upTo`; limits in micrometres for widths to 1200, to 1500 and over 1500 mm.
struct ThicknessRow {
  int upTo;
  int normal[3];
  int special[3];
};

constexpr ThicknessRow thicknessRows[] = {
    {400, {40, 50, 60}, {30, 35, 40}},  {600, {40, 50, 60}, {35, 40, 45}},  {800, {50, 60, 70}, {40, 45, 50}},
    {1000, {60, 70, 80}, {45, 50, 60}}, {1200, {70, 80, 90}, {50, 60, 70}}, {1600, {100, 110, 120}, {60, 70, 80}},
};

constexpr Length thinnest = micrometres(200);

}  // namespace

Length squarenessLimit(Length coverWidth) { return scaled(coverWidth, 5, 1000); }

std::optional<ToleranceRange> lengthTolerance(Length ordered) {
  if (ordered > Length::millimetres(3000)) return std::nullopt;
  return ToleranceRange{ordered - Length::millimetres(5), ordered + Length::millimetres(10)};
}

Length pitchTolerance(Length depth) {
  if (depth <= Length::millimetres(50)) return Length::millimetres(2);
  return Length::millimetres(depth <= Length::millimetres(100) ? 3 : 4);
}

std::optional<ToleranceRange> thicknessTolerance(Length thickness, Length width, ThicknessTolerance which) {
  if (thickness < thinnest) return std::nullopt;
  const int column = width <= Length::millimetres(1200) ? 0 : width <= Length::millimetres(1500) ? 1 : 2;
  for (const ThicknessRow& row : thicknessRows) {
    if (thickness > micrometres(row.upTo)) continue;
    const Length limit = micrometres(which == ThicknessTolerance::Normal ? row.normal[column] : row.special[column]);
    return ToleranceRange{thickness - limit, thickness + limit};
  }
  return std::nullopt;
}

Length leastDeliveredThickness(Length design) { return scaled(design, 95, 100); }

}  // namespace ribwright
