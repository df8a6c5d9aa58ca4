// Rows of girts on an elevation: dashed lines behind the sheets, and their heights in a column left of the wall. Unit:
// mm.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// A row that is seen on this drawing, each height of each girt once, from the lowest.
struct RowHeight {
  std::string words;  // "g1 4' 0\"", of nested girts "g1+g2 4' 3\""
  Length z;
};
std::vector<RowHeight> rowHeights(const WallView& view);

// Width left of the wall that the column takes; 0 without rows.
double roomForRowHeights(const WallView& view);

// Gives how many rows found no room in the column.
int drawRowHeights(Sketch& sketch, const WallView& view);

// Where steel of girts is, wherever no text stands: to be drawn after all texts.
void drawGirtLines(Sketch& sketch, const WallView& view);

// x of the parts of a level line that lie in the face.
struct LevelPart {
  double from, to;
};
std::vector<LevelPart> partsInFace(const WallView& view, Length z, Length from, Length to);

}  // namespace ribwright
