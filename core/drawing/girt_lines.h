// Rows of girts on an elevation: dashed lines behind the sheets, and their heights in a column left of the wall. Unit:
// mm.
#pragma once

#include <vector>

#include "core/drawing/height_column.h"

namespace ribwright {

// Rows that are seen on this drawing, each height of each girt once, from the lowest.
std::vector<HeightLabel> rowHeights(const WallView& view);

// Width left of the wall that the column takes; 0 without rows.
double roomForRowHeights(const WallView& view);

// Gives how many rows found no room in the column.
int drawRowHeights(Sketch& sketch, const WallView& view);

// Where steel of girts is, wherever no text stands: to be drawn after all texts.
void drawGirtLines(Sketch& sketch, const WallView& view);

}  // namespace ribwright
