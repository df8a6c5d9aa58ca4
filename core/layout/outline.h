// Rings round connected cells.
#pragma once

#include <vector>

#include "core/layout/run_cells.h"

namespace ribwright {

// More than the rounding of a crossing could move a corner of an ordinary slope, less than anybody cuts.
inline constexpr Length kRounding = Length::nanometres(8);

// The boundary of cells that hang together: first the outer ring, then inner ones; each clockwise in (t, z) with t to
// the right. Corners stand only where the boundary turns; a sloped side that was cut at breaks is one side. Jogs of a
// few nanometres, left by a crossing rounded to the nanometre, are no corners.
std::vector<Ring> outline(const std::vector<RunCell>& cells);

}  // namespace ribwright
