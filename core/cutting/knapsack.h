// The most points that one stock piece holds, exactly, and what it holds then.
#pragma once

#include <optional>

#include "core/cutting/cut_problem.h"
#include "core/cutting/cutting_work.h"

namespace ribwright {

struct KnapsackAsked {
  const std::vector<std::int64_t>& sizes;   // > 0
  const Counts& bounds;                     // no size oftener, >= 0
  const std::vector<std::int64_t>& points;  // >= 0; bounds times points sum to less than 2^62
  std::int64_t capacity = 0;
};

struct KnapsackBest {
  std::int64_t points = 0;
  Counts counts{};  // sizes without points are left out
};

// Branches on the size with the most points per length first; where that takes too many steps, reckons out all
// capacities one after the other. Nothing: the work is stopped.
std::optional<KnapsackBest> bestKnapsack(const KnapsackAsked& asked, CuttingWork& work);

}  // namespace ribwright
