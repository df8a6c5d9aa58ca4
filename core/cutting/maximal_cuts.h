// Every way to fill a stock that holds the longest piece there is.
#pragma once

#include <optional>

#include "core/cutting/column_generation.h"

namespace ribwright {

struct MaximalCuts {
  std::vector<StockCut> cuts;  // each once
  bool complete = true;        // false: there are more than can be gone through
};

// Fills to which nothing more can be put, of the stocks there are, such that what is then left is not refuted by
// `prices` (whose most holds for `demand`). Those that `likely` names come first, then those that hold more points.
MaximalCuts maximalCuts(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                        const std::optional<PiecePoints>& prices, const std::vector<LpCut>& likely, CuttingWork& work);

}  // namespace ribwright
