// The page that goes with the survey: which girts sag and want props before they are measured, where to snap the chalk
// line, and what the two diagonals say.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"

namespace ribwright {

// Of what is known; empty when nothing is: no girt's sag can be worked out, and neither slab edge nor diagonals are
// measured.
std::vector<BarePage> steelPages(const DrillWall& wall);

}  // namespace ribwright
