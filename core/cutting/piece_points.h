// Price lists as the solver works on them: exact, whatever proposed the points.
#pragma once

#include <optional>

#include "core/cutting/cut_problem.h"
#include "core/cutting/cutting_work.h"
#include "core/cutting/knapsack.h"

namespace ribwright {

struct PiecePoints {
  std::vector<std::int64_t> points;  // parallel to the sizes
  std::vector<std::int64_t> most;    // parallel to the stocks: what one holds at most
};

// How much the pieces are worth, and what the stocks hold together at most.
Int128 worthOf(const std::vector<std::int64_t>& points, const Counts& counts);
Int128 mostOf(const PiecePoints& prices, const Counts& stocks);

// Stocks in these counts hold too few points for the demand.
inline bool refutes(const PiecePoints& prices, const Counts& demand, const Counts& stocks) {
  return mostOf(prices, stocks) < worthOf(prices.points, demand);
}

// Whole points in the proportion of `prices` (negative ones are taken for 0), the greatest `scale`.
std::vector<std::int64_t> wholePoints(const std::vector<double>& prices, std::int64_t scale);

struct PricedStocks {
  PiecePoints prices;
  std::vector<Counts> fills;  // parallel to the stocks: what holds the most
};
// The most for each stock of which `stocks` has some (0 for others), no size oftener than `demand` has it. Nothing:
// stopped.
std::optional<PricedStocks> priced(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                                   std::vector<std::int64_t> points, CuttingWork& work);

}  // namespace ribwright
