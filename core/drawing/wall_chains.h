// The dimensions under a wall: its openings' jambs, its columns, and the whole. Unit: mm.
#pragma once

#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// x of the upright lines that come down from the wall to its dimensions, rising: its ends and its openings' jambs.
std::vector<double> witnessLines(const WallView& view);

// Keeps texts that are placed later off those lines.
void reserveWitnessLines(Sketch& sketch, const WallView& view, double base);

// Chains one under the other; `base`: y of the sheets' lower end. Gives how many figures found no room.
int drawWallChains(Sketch& sketch, const WallView& view, double base);

}  // namespace ribwright
