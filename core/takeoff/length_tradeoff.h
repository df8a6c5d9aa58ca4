// Which lengths to order when there may be only so many: least steel against fewest lengths.
//
// Exact: a blank goes into the least chosen length that holds it, so the chosen lengths part the list, longest first,
// into stretches of neighbours; dynamic programming over the stretches, O(k n^2) for n different lengths. Whole numbers
// throughout.
#pragma once

#include <vector>

#include "core/job/ordering.h"
#include "core/units/length.h"

namespace ribwright {

// Sheets wanted of one length made.
struct WantedLength {
  Length length;
  int count = 0;  // > 0
  bool operator==(const WantedLength&) const = default;
};

struct LengthChoice {
  std::vector<Length> lengths;  // rising; the longest wanted is the last
  Length bought;                // all sheets end to end, spares too
  Length spares;                // those of them that are spare
  Length cutAway;               // sum over the sheets to be hung of what they are longer than wanted
  bool operator==(const LengthChoice&) const = default;
};

// Spares of a line of `count` sheets: the greater of both ways to state them.
int sparesOf(const Spares& spares, int count);

// The choice of at most `most` lengths that buys least; of equals the one with fewest lengths, then with the lowest
// (compared from the shortest on). 0: every length as wanted. `wanted` in any order; equal lengths may stand in several
// items. Empty for an empty list. Throws std::invalid_argument when `most` or a count is negative.
LengthChoice chooseLengths(std::vector<WantedLength> wanted, const Spares& spares, int most);

// For at most 1, 2 ... n lengths, n different ones wanted: what each of them buys, never more than the one before.
std::vector<LengthChoice> lengthTradeOff(std::vector<WantedLength> wanted, const Spares& spares);

// Of `choice`, the length that a blank of `wanted` is ordered at: the least that is long enough. Throws
// std::invalid_argument when none is.
Length orderLength(const LengthChoice& choice, Length wanted);

}  // namespace ribwright
