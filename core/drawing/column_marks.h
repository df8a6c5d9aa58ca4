// Columns of the steel frame on an elevation: a numbered mark each under the wall, and the bays between them. Unit: mm.
#pragma once

#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

struct ColumnPlace {
  int number = 0;  // 1, 2 ... from the left corner, as openings name them
  Length u;        // of its centre
};

// Those of a wall whose bays are stated and that stand on it; rising.
std::vector<ColumnPlace> columnPlaces(const Wall& wall, Length width);
// Those on this drawing; one at a match line stands on both pages.
std::vector<ColumnPlace> columnsSeen(const WallView& view);
// The one whose centre is nearest to u, of two equally near the left one; none where no column stands on the wall.
std::optional<ColumnPlace> nearestColumn(const Wall& wall, Length width, Length u);

// Numbers in a row under `base`, the lower end of the sheets, clear of the upright lines at `barred` (x, rising), each
// with a chain line up to the wall. Gives how many numbers found no room.
int drawColumnMarks(Sketch& sketch, const WallView& view, double base, const std::vector<double>& barred);

// Height of that row; 0 without columns.
double roomForColumnMarks(const WallView& view);

}  // namespace ribwright
