// How long a sheet is bought.
#pragma once

#include "core/job/profile.h"

namespace ribwright {

// For what must measure `needed`: up to a whole increment and no less than the shortest length made; of a profile sold
// off the shelf the length itself, since what is left of a stocked sheet goes into the next cut.
Length boughtLength(const SheetLengths& lengths, Length needed);

// The longest sheet that can be bought: a whole number of increments, or the longest in stock.
Length longestBought(const SheetLengths& lengths);

}  // namespace ribwright
