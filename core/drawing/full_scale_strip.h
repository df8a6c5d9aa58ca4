// Strips of paper, true to size, to lay across the sheet from its starting edge and mark holes through. Unit: mm, y
// down.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"
#include "core/drawing/sheet_lying.h"

namespace ribwright {

// One strip for each set of offsets in the wall's cleared batches, in tiles that are glued together at lettered match
// lines; with rulers of 100 mm and 6 in on every page that prove the printer. Empty: no batch is cleared.
std::vector<BarePage> stripPages(const DrillWall& wall, Lying lying);

}  // namespace ribwright
