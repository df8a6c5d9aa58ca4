// Where the ribs of a wall's sheets end, as short ticks under the foot of the wall. Unit: mm.
#pragma once

#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// u of the middle of every rib of a sheet that is seen on this drawing, rising. A rib that lies over the neighbour's is
// counted once. Empty where the profile is not known, has no ribs, or has them closer than can be told apart on paper.
std::vector<Length> ribsSeen(const WallView& view, const Piece& piece);

// Ticks wherever no text stands; gives whether any is drawn.
bool drawRibEnds(Sketch& sketch, const WallView& view);

// A tick with its upper end at `at`.
std::vector<PaperPoint> ribRing(const PaperPoint& at);
inline constexpr double ribTick = 1.4;  // its height

}  // namespace ribwright
