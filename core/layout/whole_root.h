// Square root of a whole number, and the distance of two plan points from it; no floating point.
#pragma once

#include "core/job/building.h"

namespace ribwright {

// The largest whole number whose square is not above `square` (0 <= square < 2^124).
Int128 wholeRoot(Int128 square);

// To the nearest nanometre.
Length distance(const PlanPoint& a, const PlanPoint& b);

}  // namespace ribwright
