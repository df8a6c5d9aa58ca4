// What the signs of an elevation mean: marks of screws with how many there are of each kind and that nothing is drilled
// by them, girts' flanges, ends of ribs, hatching. Unit: mm, y down.
#pragma once

#include "core/drawing/screw_marks.h"

namespace ribwright {

// What is on the drawing.
struct Shown {
  ScrewsShown screws;
  bool ribs = false;
  bool translucent = false;
  int columnsWithoutRoom = 0;
};

// Its upper edge at `y`, about the middle of the wall; nothing when there is nothing to tell.
void drawLegend(Sketch& sketch, const WallView& view, const Shown& shown, double y);

}  // namespace ribwright
