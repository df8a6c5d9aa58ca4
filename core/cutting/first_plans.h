// Plans made by filling one stock after the other: quick, valid, often the best.
#pragma once

#include <optional>

#include "core/cutting/cut_problem.h"
#include "core/cutting/cutting_work.h"

namespace ribwright {

// Each stock is begun with the longest piece that is left and filled with the next longest that fit, in the stock that
// costs the least for what it then holds. Nothing: supply ran out.
std::optional<StockCuts> firstFitPlan(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                                      CuttingWork& work);

}  // namespace ribwright
