#include "core/cutting/piece_points.h"

#include <algorithm>
#include <cmath>

namespace ribwright {

Int128 worthOf(const std::vector<std::int64_t>& points, const Counts& counts) {
  Int128 worth = 0;
  for (std::size_t i = 0; i < points.size(); ++i) worth += Int128(points[i]) * counts[i];
  return worth;
}

Int128 mostOf(const PiecePoints& prices, const Counts& stocks) {
  Int128 most = 0;
  for (std::size_t k = 0; k < stocks.size(); ++k) most += Int128(prices.most[k]) * stocks[k];
  return most;
}

std::vector<std::int64_t> wholePoints(const std::vector<double>& prices, std::int64_t scale) {
  double greatest = 0;
  for (const double price : prices) greatest = std::max(greatest, price);
  std::vector<std::int64_t> points;
  for (const double price : prices) {
    const double share = greatest > 0 ? std::max(0.0, price) / greatest : 0.0;
    points.push_back(static_cast<std::int64_t>(std::floor(share * static_cast<double>(scale) + 1e-9)));
  }
  return points;
}

std::optional<PricedStocks> priced(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                                   std::vector<std::int64_t> points, CuttingWork& work) {
  PricedStocks priced;
  priced.prices.points = std::move(points);
  for (std::size_t k = 0; k < problem.stocks.size(); ++k) {
    KnapsackBest best{0, Counts(problem.kinds(), 0)};
    if (stocks[k] > 0) {
      auto found = bestKnapsack({problem.sizes, demand, priced.prices.points, problem.stocks[k].capacity}, work);
      if (!found) return std::nullopt;
      best = std::move(*found);
    }
    priced.prices.most.push_back(best.points);
    priced.fills.push_back(std::move(best.counts));
  }
  return priced;
}

}  // namespace ribwright
