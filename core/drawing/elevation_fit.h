// An elevation fitted to its paper: scale, breaks and pictures. Unit: mm.
#pragma once

#include <vector>

#include "core/drawing/page_frame.h"
#include "core/drawing/paper_table.h"
#include "core/drawing/wall_picture.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// What one elevation is made from, and the tables that go with it.
struct Elevation {
  PageFrame frame;
  WallView view;  // its scale and limits are set for each attempt
  std::vector<PaperTable> tables;
  Box work;
  int firstPage = 1;  // number of its first page in the set
};

// The wall at one scale: a picture for each page.
struct FittedWall {
  DrawingScale scale;
  std::vector<Length> breaks;
  std::vector<WallPicture> pictures;
  bool tablesUnder = false;  // the tables have room under the only picture

  double height() const;  // of the tallest picture
  double width() const;
};

// The largest usual scale at which sheets can be named and the fewest pages are needed; a step smaller where the
// tables then find room on the same page and no screw loses its mark. A wall that fits no usual scale is drawn at the
// largest small scale that it fits.
FittedWall fitted(const Elevation& elevation);

// Height that all tables take one over the other.
double heightOfTables(const Elevation& elevation);

constexpr double overTable = 3;   // clear paper over a table
constexpr double noteHeight = 5;  // of a line of words under a picture

}  // namespace ribwright
