// What is seen of a wall from outside, without words: sheets, openings, concrete, corners, joints and match lines.
#pragma once

#include <array>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

void drawFace(Sketch& sketch, const WallView& view);

// Outline of what a cut region leaves open within the face, clockwise from its lower left; empty when it lies off the
// face.
std::vector<PaperPoint> openOutline(const WallView& view, const CutRegion& cut);

// z between which a cut region is open at u within the face: lower, upper.
std::array<Length, 2> openHeights(const WallLayout& layout, const CutRegion& cut, Length u, Beside side);

}  // namespace ribwright
