#include "core/drawing/ring_within.h"

#include <algorithm>

namespace ribwright {

namespace {

// A ring cut off at an upright or level line: keeps what lies on the inner side.
std::vector<PaperPoint> cutOff(const std::vector<PaperPoint>& ring, double PaperPoint::*axis, double limit,
                               bool below) {
  const auto inner = [&](const PaperPoint& point) { return below ? point.*axis <= limit : point.*axis >= limit; };
  std::vector<PaperPoint> kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const PaperPoint& a = ring[i];
    const PaperPoint& b = ring[(i + 1) % ring.size()];
    if (inner(a)) kept.push_back(a);
    if (inner(a) == inner(b)) continue;
    const double along = (limit - a.*axis) / (b.*axis - a.*axis);
    kept.push_back({a.x + (b.x - a.x) * along, a.y + (b.y - a.y) * along});
  }
  return kept;
}

}  // namespace

std::vector<PaperPoint> ringWithin(std::vector<PaperPoint> ring, const Box& box) {
  ring = cutOff(ring, &PaperPoint::x, box.left, false);
  ring = cutOff(ring, &PaperPoint::x, box.right, true);
  ring = cutOff(ring, &PaperPoint::y, box.top, false);
  return cutOff(ring, &PaperPoint::y, box.bottom, true);
}

std::optional<std::pair<PaperPoint, PaperPoint>> lineWithin(const PaperPoint& a, const PaperPoint& b, const Box& box) {
  double enter = 0, leave = 1;
  const auto clip = [&](double from, double to, double low, double high) {
    constexpr double hair = 1e-9;
    if (from == to) return from >= low - hair && from <= high + hair;
    const double first = (low - from) / (to - from), second = (high - from) / (to - from);
    enter = std::max(enter, std::min(first, second));
    leave = std::min(leave, std::max(first, second));
    return true;
  };
  if (!clip(a.x, b.x, box.left, box.right) || !clip(a.y, b.y, box.top, box.bottom) || leave <= enter) return {};
  const auto point = [&](double along) { return PaperPoint{a.x + (b.x - a.x) * along, a.y + (b.y - a.y) * along}; };
  return std::pair{point(enter), point(leave)};
}

}  // namespace ribwright
