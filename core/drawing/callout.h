// A label outside the face with a line to what it names, for what is too narrow to hold its own. Unit: mm, y down.
#pragma once

#include <vector>

#include "core/drawing/label_block.h"
#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

struct Callout {
  std::vector<LabelBlock> labels;  // what it may say, the fullest first; never empty
  std::vector<PaperPoint> points;  // any of these names the thing; the first that can be reached is taken
  bool dot = true;                 // a dot where the line begins
  PartIndex part = -1;
};

// Places each callout above the top of the wall or below its bottom, with the shortest line that runs through no text
// and no other callout's line. Where not all find a place near by, all say less. Gives back those that still found
// none.
std::vector<Callout> drawCallouts(Sketch& sketch, const WallView& view, const std::vector<Callout>& callouts);

}  // namespace ribwright
