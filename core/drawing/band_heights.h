// Where the bands of a wall begin, in a column right of it. Unit: mm.
#pragma once

#include <vector>

#include "core/drawing/height_column.h"

namespace ribwright {

// The second band and those over it, from the lowest; empty where a wall has one band or no sheets.
std::vector<HeightLabel> bandHeights(const WallView& view);

}  // namespace ribwright
