// The marking stick: a board that stands on the chalk line with every girt's planned edge marked on it; held against
// the steel it shows how far each girt is off, and has room to write it down.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"

namespace ribwright {

// One stick for each height of the chalk line (of a wall whose concrete steps). Empty: the wall has no girts.
std::vector<BarePage> markingStickPages(const DrillWall& wall);

}  // namespace ribwright
