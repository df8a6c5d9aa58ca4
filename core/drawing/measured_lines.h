// Girts and eave purlin as they were measured, on an elevation: from station to station, with how far each stands from
// the plans enlarged, since at any drawing scale it would be less than a line's width. Unit: mm, y down.
#pragma once

#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// How many times a deviation is enlarged against the drawing's scale.
inline constexpr int deviationEnlarged = 10;

// One for each edge that has readings at two stations or more, of what this drawing shows of it; about the line that
// the drawing has for it (a girt's row; the steel line).
std::vector<std::vector<PaperPoint>> measuredLines(const WallView& view);

// Wherever no text stands: to be drawn after all texts. Solid, where the plans' rows are dashed.
void drawMeasuredLines(Sketch& sketch, const WallView& view);

}  // namespace ribwright
