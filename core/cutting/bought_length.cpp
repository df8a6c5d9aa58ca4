#include "core/cutting/bought_length.h"

#include <algorithm>

#include "core/layout/end_laps.h"

namespace ribwright {

Length boughtLength(const SheetLengths& lengths, Length needed) {
  if (!lengths.stocked.empty()) return needed;
  return std::max(lengths.shortest, roundUp(needed, lengths.increment));
}

Length longestBought(const SheetLengths& lengths) {
  if (lengths.stocked.empty()) return longestOrder(lengths);
  return *std::max_element(lengths.stocked.begin(), lengths.stocked.end());
}

}  // namespace ribwright
