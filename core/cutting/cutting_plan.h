// How a list of lengths is cut, and why it cannot be cut from less.
#pragma once

#include <cstdint>
#include <vector>

namespace ribwright {

// One way to cut a stock piece, and how many are cut so.
struct CutPattern {
  int stock = 0;                     // index in CuttingList::stocks
  std::int64_t times = 0;            // > 0
  std::vector<std::int64_t> counts;  // parallel to CuttingList::demands
  bool operator==(const CutPattern&) const = default;
};

// Points for each piece, and the most that one stock piece holds: what n stock pieces hold is no more than the sum of
// their most, so stocks that together hold fewer points than the order is worth cannot serve it (Farley, "A note on
// bounding a class of linear programming problems, including cutting stock problems", Operations Research 38, 1990).
struct PriceList {
  std::vector<std::int64_t> points;  // parallel to CuttingList::demands, >= 0; equal lengths have equal points
  std::vector<std::int64_t>
      mostPerStock;  // parallel to CuttingList::stocks: the exact most, no length oftener than it is wanted
  bool operator==(const PriceList&) const = default;
};

struct CuttingPlan {
  std::vector<CutPattern> patterns;  // together cut exactly what is wanted
  std::int64_t total = 0;            // sum of costOf over the stock pieces cut
  std::int64_t bound = 0;            // no plan's total is less; <= total
  // Every choice of stocks that costs less than `bound` holds too few points in one of these lists; with
  // `provedBySearch` that holds of all but those choices which were searched through.
  std::vector<PriceList> proof;
  bool provedBySearch = false;
  bool operator==(const CuttingPlan&) const = default;

  // No plan costs less.
  bool proved() const { return total == bound; }
  // How many stock pieces are cut.
  std::int64_t stockPieces() const {
    std::int64_t pieces = 0;
    for (const CutPattern& pattern : patterns) pieces += pattern.times;
    return pieces;
  }
};

}  // namespace ribwright
