// What the marks of screws mean, how many there are of each kind, and that nothing is drilled by them. Unit: mm, y
// down.
#pragma once

#include "core/drawing/screw_marks.h"

namespace ribwright {

// Its upper edge at `y`, about the middle of the wall; nothing when no screw is shown.
void drawScrewLegend(Sketch& sketch, const WallView& view, const ScrewsShown& shown, double y);

}  // namespace ribwright
