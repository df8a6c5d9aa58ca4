// Hatching of what a drawing shows: slanting strokes across a shape, in black and white and on any printer. Unit: mm.
#pragma once

#include <utility>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// Strokes that rise at 45 degrees through rings (even-odd rule), `apart` from one another measured square to them; on
// the same lines wherever a shape lies, so that neighbours join.
std::vector<std::pair<PaperPoint, PaperPoint>> hatchLines(const std::vector<std::vector<PaperPoint>>& rings,
                                                          double apart);

// Hatches translucent sheets wherever no text stands, to be drawn after all texts; gives whether there are any.
bool drawTranslucent(Sketch& sketch, const WallView& view);

// One stroke of it as a sign, its middle at `at`.
std::vector<PaperPoint> hatchSign(const PaperPoint& at);
inline constexpr double hatchSignReach = 1.1;  // half its width and height

}  // namespace ribwright
