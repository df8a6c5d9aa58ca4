// Cuts a list of lengths from stock at the least cost, and proves it.
//
// Integers decide: floating point proposes, exact sums accept. The same list and the same effort give the same plan on
// every machine. The method: first plans and bounds by filling one stock after the other; patterns by column generation
// (Gilmore and Gomory, "A linear programming approach to the cutting stock problem", Operations Research 9, 1961) over
// patterns that cut no length oftener than it is wanted; bounds by Farley 1990 in whole numbers; the cheapest choice of
// stocks that no price list refutes is rounded to a plan, refuted, or searched through.
#pragma once

#include <cstdint>
#include <functional>

#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
#include "core/units/outcome.h"

namespace ribwright {

struct CuttingProgress {
  std::int64_t total = 0;  // of the best plan so far
  std::int64_t bound = 0;  // no plan's total is less
  std::int64_t spent = 0;  // steps of work
};

struct CuttingOptions {
  // Work limit in counted steps (about a nanosecond each on a desk computer), never a clock. When it is spent, the best
  // plan so far and its bound are given. 0 gives a first plan.
  std::int64_t effort = 3'000'000'000;
  // Called now and then, and when plan or bound became better; false stops and keeps the best so far.
  std::function<bool(const CuttingProgress&)> progress{};
};

// Faults: those of faultsOf(list); what lies in supply cannot serve the order; no plan was found with so little effort
// (possible only where each stock that is long enough has a supply).
Outcome<CuttingPlan> cutStock(const CuttingList& list, const CuttingOptions& options = {});

}  // namespace ribwright
