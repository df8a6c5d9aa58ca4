// Rings and lines on paper cut off at an upright rectangle. Unit: mm, y down.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/drawing/box.h"

namespace ribwright {

// What of a ring lies in the box; fewer than three points when nothing does.
std::vector<PaperPoint> ringWithin(std::vector<PaperPoint> ring, const Box& box);

// The part of a straight line that lies in the box or on its edge.
std::optional<std::pair<PaperPoint, PaperPoint>> lineWithin(const PaperPoint& a, const PaperPoint& b, const Box& box);

}  // namespace ribwright
