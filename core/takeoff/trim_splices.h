// A piece of trim that is longer than what is sold is made of several, each lapping the one before.
#pragma once

#include <vector>

#include "core/job/trim.h"
#include "core/takeoff/trim_pieces.h"

namespace ribwright {

// The longest part that can be cut: the longest stocked length less its ends. 0: nothing is stocked, or less than 1 ft
// or two splice laps is left of it; then pieces are ordered to length and never spliced.
Length longestPart(const Trim& trim);

// The fewest parts: whole stocked lengths and a rest; where the rest would be shorter than 1 ft, the last two are of
// equal length (to the nanometre; the last may have one more). Sum of the parts = length + a lap for each splice.
// `length` > 0.
std::vector<TrimPart> splicedParts(Length length, const Trim& trim);

}  // namespace ribwright
