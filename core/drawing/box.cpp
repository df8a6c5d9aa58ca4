#include "core/drawing/box.h"

#include <algorithm>

namespace ribwright {

bool overlap(const Box& a, const Box& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

bool inside(const Box& inner, const Box& outer) {
  return inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top &&
         inner.bottom <= outer.bottom;
}

Box united(const Box& a, const Box& b) {
  return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right), std::max(a.bottom, b.bottom)};
}

bool crosses(const Box& box, const PaperPoint& a, const PaperPoint& b) {
  // The part of the line, from 0 at a to 1 at b, that lies between each pair of parallel sides.
  double enter = 0, leave = 1;
  const auto clip = [&](double from, double to, double low, double high) {
    const double along = to - from;
    if (along == 0) return from > low && from < high;
    const double first = (low - from) / along, second = (high - from) / along;
    enter = std::max(enter, std::min(first, second));
    leave = std::min(leave, std::max(first, second));
    return true;
  };
  return clip(a.x, b.x, box.left, box.right) && clip(a.y, b.y, box.top, box.bottom) && enter < leave;
}

}  // namespace ribwright
