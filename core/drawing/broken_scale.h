// Places along a line that is too long for the paper: in their order, true to scale where there is room, and never
// nearer than a label needs. Unit: mm.
#pragma once

#include <vector>

namespace ribwright {

// Widths of the spaces on paper, of which the true ones are `spaces` (any one unit, none negative): together `width`,
// each at least the one of `least` beside it, the rest in the proportion of the true ones. Nothing when even the least
// ones do not fit.
std::vector<double> brokenSpaces(const std::vector<double>& spaces, const std::vector<double>& least, double width);

}  // namespace ribwright
