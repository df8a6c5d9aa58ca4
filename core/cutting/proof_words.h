// The proof that a list cannot be cut from less, as sentences that a person can check with pencil and paper.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
#include "core/words/words.h"

namespace ribwright {

// Pieces from the longest to the shortest that count the same; no other length that is wanted lies between.
struct PointRange {
  std::int64_t longest = 0, shortest = 0;
  std::int64_t points = 0;
  bool operator==(const PointRange&) const = default;
};

// From the longest range to the shortest; lengths of which none is wanted are left out.
std::vector<PointRange> pointRanges(const CuttingList& list, const PriceList& prices);

// How much the whole order is worth.
std::int64_t worthOf(const CuttingList& list, const PriceList& prices);

// What it says of itself: what counts how much, how much a stock holds, how much the order is worth, and what follows;
// of several price lists one after the other. Where choices of stock were searched through, and where the plan is not
// proved, it is said. Empty: there is nothing to be proved, as the plan costs nothing. `lengthText` and `costText`
// write numbers of the list.
std::vector<Phrase> proofWords(const CuttingList& list, const CuttingPlan& plan,
                               const std::function<std::string(std::int64_t)>& lengthText,
                               const std::function<std::string(std::int64_t)>& costText);

}  // namespace ribwright
