// Where a wall's first sheet hangs, which way the others follow, and which edge lies outside. Unit: mm.
#pragma once

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

inline constexpr double startFlagRoom = 11;  // under the lower end of the sheets, before the first dimension

// A flag under the start corner, on its outer side; nothing where the drawing does not reach that corner. `base`: y of
// the sheets' lower end.
void drawStartFlag(Sketch& sketch, const WallView& view, double base);

// An arrow along the hanging direction, and two sheets in section with the later one outside; upper edge at `y`.
void drawHangSign(Sketch& sketch, const WallView& view, double y);

}  // namespace ribwright
