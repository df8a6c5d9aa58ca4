// A cutting list as the solver works on it: equal lengths merged, the longest first, kerf put to each piece and to the
// stock, what is common to all lengths divided out, stocks that are of no use left out.
#pragma once

#include <cstdint>
#include <vector>

#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
#include "core/units/length.h"  // Int128

namespace ribwright {

using Counts = std::vector<std::int64_t>;

constexpr std::int64_t endlessSupply = 10'000'000'000;

struct CutStock {
  std::int64_t capacity = 0;
  std::int64_t cost = 0;
  std::int64_t supply = 0;  // of what costs nothing never more than there are pieces
};

struct CutProblem {
  std::vector<std::int64_t> sizes;  // strictly falling
  Counts demand;                    // parallel, > 0
  std::vector<CutStock> stocks;

  std::size_t kinds() const { return sizes.size(); }
};

// Pieces of one stock, counts parallel to the sizes.
struct StockCut {
  std::size_t stock = 0;
  std::int64_t times = 0;
  Counts counts{};
};
using StockCuts = std::vector<StockCut>;

struct ReducedList {
  CutProblem problem;
  std::vector<int> stockOf;                 // problem stock -> list stock
  std::vector<int> sizeOf;                  // list demand -> size; -1: none is wanted
  std::vector<std::int64_t> allCapacities;  // of every stock of the list, in the problem's unit; may be <= 0
};

// `list` has no faults.
ReducedList reduced(const CuttingList& list);

std::int64_t costOf(const CutProblem& problem, const StockCuts& cuts);

// The plan's patterns in the list's own lines: cut lengths come to exactly what is wanted, whatever more `cuts` hold.
std::vector<CutPattern> patternsOf(const CuttingList& list, const ReducedList& reduced, StockCuts cuts);

}  // namespace ribwright
