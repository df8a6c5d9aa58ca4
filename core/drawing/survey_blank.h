// A blank to write a survey of girts and slab edge on: a row an edge, a column a station, the planned height small in
// each box. Unit: mm, y down.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"

namespace ribwright {

// Empty for a wall on which there is nothing to measure.
std::vector<BarePage> surveyBlankPages(const DrillWall& wall);

}  // namespace ribwright
