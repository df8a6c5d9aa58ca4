// What is to be cut from what: a list of lengths, and the stock they are cut from.
//
// Unit: any whole unit, the same for all lengths of a list (nanometres are as good as sixteenths: what is common to all
// is divided out). A stock piece of length L holds pieces when the sum of their lengths, one kerf between each two of
// them, is no more than L - endTrim. Equal lengths may stand in several lines.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/units/outcome.h"

namespace ribwright {

struct Stock {
  std::int64_t length = 0;               // > 0
  std::optional<std::int64_t> cost{};    // of one, >= 0; absent: see costOf
  std::optional<std::int64_t> supply{};  // at most so many, >= 0; absent: as many as wanted
  bool operator==(const Stock&) const = default;
};

struct CutDemand {
  std::int64_t length = 0;  // > 0
  std::int64_t count = 0;   // >= 0, cut exactly so often
  bool operator==(const CutDemand&) const = default;
};

struct CuttingList {
  std::vector<Stock> stocks;
  std::int64_t kerf = 0;     // lost between two pieces, >= 0
  std::int64_t endTrim = 0;  // lost at both ends of each stock together, >= 0
  std::vector<CutDemand> demands;
  bool operator==(const CuttingList&) const = default;
};

// What one of `list.stocks[stock]` counts for: its cost; where none is given 1 with a single stock, else its length.
std::int64_t costOf(const CuttingList& list, std::size_t stock);

// The faults that stand in the way of a plan; empty: none. Places are `stocks[0].length`, `demands[2].count`, `kerf`
// ... A list may hold 2 000 lines, 200 stocks and 10 000 000 pieces, lengths and costs up to 10^15, whose sum over the
// pieces does not exceed 10^18.
std::vector<Fault> faultsOf(const CuttingList& list);

}  // namespace ribwright
