#include "tests/fuzz/stated_zone.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ribwright::fuzz {
namespace {

Nm part(Nm whole, Nm above, Nm below) { return static_cast<Nm>(toNearestEven(Int128(whole) * above, below)); }

struct PlanBox {
  Nm x = 0, y = 0;
};

PlanBox boxOf(const std::vector<PlanPoint>& outline) {
  Length left = outline.front().x, right = left, low = outline.front().y, high = low;
  for (const PlanPoint& point : outline) {
    left = std::min(left, point.x);
    right = std::max(right, point.x);
    low = std::min(low, point.y);
    high = std::max(high, point.y);
  }
  return {(right - left).nanometres(), (high - low).nanometres()};
}

// Those of a roof over the outline; without one the wall's own.
std::vector<StatedLine> steelLines(const Job& job, const Wall& wall, const StatedFace& face) {
  if (job.building.roof.kind == Roof::Kind::None) return {face.steel};
  std::vector<StatedLine> lines;
  for (std::size_t edge = 0; edge < job.building.outline.size(); ++edge) {
    Wall other = wall;
    other.letter = std::string(1, static_cast<char>('A' + edge));
    other.line.reset();
    other.width.reset();
    other.top.clear();
    lines.push_back(statedFace(job, other).steel);
  }
  return lines;
}

struct RoofHeights {
  Nm eave = INT64_MAX, highest = INT64_MIN;
  bool steep = false;
};

RoofHeights heightsOf(const std::vector<StatedLine>& lines) {
  RoofHeights heights;
  const double tenDegrees = std::tan(10 * std::numbers::pi / 180);
  for (const StatedLine& line : lines) {
    heights.eave = std::min({heights.eave, line.segments.front().z0, line.segments.back().z1});
    for (const Segment& s : line.segments) {
      heights.highest = std::max({heights.highest, s.z0, s.z1});
      const auto rise = static_cast<double>(s.z1 - s.z0), run = static_cast<double>(s.u1 - s.u0);
      heights.steep = heights.steep || std::abs(rise) >= run * tenDegrees;
    }
  }
  return heights;
}

Nm asce(const PlanBox& box, const RoofHeights& heights) {
  const Nm least = std::min(box.x, box.y);
  const Nm mean = heights.eave + (heights.highest - heights.eave) / 2;
  const Nm height = heights.steep ? mean : heights.eave;
  const Nm floor = std::max(part(least, 4, 100), Length::feet(3).nanometres());
  return std::max(std::min(part(least, 1, 10), part(height, 4, 10)), floor);
}

Nm en1991(const PlanBox& box, const RoofHeights& heights, const StatedFace& face) {
  Nm across = std::min(box.x, box.y);
  if (face.line && face.line->from.y == face.line->to.y) across = box.y;
  if (face.line && face.line->from.x == face.line->to.x) across = box.x;
  const Nm e = std::min(across, 2 * heights.highest);
  return 5 * Int128(face.width) <= e ? face.width : part(e, 1, 5);
}

}  // namespace

std::optional<Nm> statedZone(const Job& job, const Wall& wall, const StatedFace& face) {
  const CornerZones& zones = job.settings.cornerZones;
  if (zones.rule == CornerZones::Rule::None) return 0;
  if (zones.rule == CornerZones::Rule::Typed) return zones.width.nanometres();
  if (job.building.outline.empty()) return std::nullopt;
  const RoofHeights heights = heightsOf(steelLines(job, wall, face));
  const PlanBox box = boxOf(job.building.outline);
  return zones.rule == CornerZones::Rule::Asce7 ? asce(box, heights) : en1991(box, heights, face);
}

}  // namespace ribwright::fuzz
