// Looks at a cutting plan and its proof by sums of its own: it knows the structures, and calls nothing of core/cutting.
#pragma once

#include <optional>

#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
#include "tests/fuzz/complaints.h"

namespace ribwright::fuzz {

// Every stock holds what is cut from it, every length is cut as often as it is wanted, no supply is overdrawn, the
// total is right; every `most` is the most, and every choice of stocks that costs less than the bound holds too few
// points in some list. Where choices were searched through, brute force settles them (so small lists only).
Complaints checkCutting(const CuttingList& list, const CuttingPlan& plan);

// The least cost by trying everything, for a handful of pieces. Nothing: it cannot be done.
std::optional<std::int64_t> leastByTrying(const CuttingList& list);

// What one of the stocks counts for.
std::int64_t statedCost(const CuttingList& list, std::size_t stock);

}  // namespace ribwright::fuzz
