#include "core/cutting/stock_cutter.h"

#include "core/cutting/cut_problem.h"
#include "core/cutting/first_plans.h"

namespace ribwright {

Outcome<CuttingPlan> cutStock(const CuttingList& list, const CuttingOptions&) {
  if (std::vector<Fault> faults = faultsOf(list); !faults.empty()) return faults;
  const ReducedList given = reduced(list);
  const auto cuts = firstFitPlan(given.problem);
  if (!cuts) return Fault{"stocks", "hold too little for what is wanted; state more supply"};
  CuttingPlan plan;
  plan.patterns = patternsOf(list, given, *cuts);
  for (const CutPattern& pattern : plan.patterns)
    plan.total += costOf(list, static_cast<std::size_t>(pattern.stock)) * pattern.times;
  return plan;
}

}  // namespace ribwright
