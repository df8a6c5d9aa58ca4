// Level dimension chains that add up as printed, and upright dimensions of heights. Unit: mm, y down.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// One space of a chain: from place to place, and what is printed for it.
struct DimensionSpace {
  Length from, to;  // u
  std::string words;
};

// The spaces between neighbouring places (rising, equal ones once). Every place is rounded to the tape's mark once and
// each space is a difference of such marks, so that the printed figures add up to the printed total.
std::vector<DimensionSpace> spacesBetween(std::vector<Length> places, const LengthStyle& style);

// Draws a chain on the line `y`, and its figures over it; those that are wider than their space stand in a row below.
struct DrawnChain {
  double lowest;     // y
  int withoutPlace;  // figures that found no room even there
};
DrawnChain drawChain(Sketch& sketch, const WallView& view, const std::vector<DimensionSpace>& spaces, double y);

// An upright dimension at x, from z = 0 up to `height`, with words that read upward on its outer side; `outward` -1 to
// the left, +1 to the right.
void drawHeight(Sketch& sketch, const WallView& view, double x, Length height, double outward,
                const std::string& longWords, const std::string& shortWords);

}  // namespace ribwright
