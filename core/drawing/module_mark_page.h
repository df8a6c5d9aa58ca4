// The page by which sheet edges are marked on base and top girt.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"

namespace ribwright {

// A row a sheet: where its leading edge stands, running from the start corner, at base and at top girt, and whether it
// is held against a plumb line. Empty for a wall without sheets.
std::vector<BarePage> moduleMarkPages(const DrillWall& wall);

}  // namespace ribwright
