#include "core/cutting/first_plans.h"

#include <algorithm>

namespace ribwright {
namespace {

// Longest first, never more than is left.
Counts firstFitCut(const CutProblem& problem, const Counts& left, std::int64_t capacity) {
  Counts counts(left.size(), 0);
  for (std::size_t i = 0; i < left.size(); ++i) {
    counts[i] = std::min(left[i], capacity / problem.sizes[i]);
    capacity -= counts[i] * problem.sizes[i];
  }
  return counts;
}

std::int64_t sizeOf(const CutProblem& problem, const Counts& counts) {
  std::int64_t size = 0;
  for (std::size_t i = 0; i < counts.size(); ++i) size += counts[i] * problem.sizes[i];
  return size;
}

struct Choice {
  std::size_t stock = 0;
  Counts counts{};
  std::int64_t held = 0, cost = 0;

  // Cheaper for what it holds; of equal ones, what holds more.
  bool beats(const Choice& other) const {
    if (other.counts.empty()) return true;
    const Int128 mine = Int128(cost) * other.held, its = Int128(other.cost) * held;
    return mine != its ? mine < its : held > other.held;
  }
};

}  // namespace

std::optional<StockCuts> firstFitPlan(const CutProblem& problem, const Counts& demand, const Counts& stocks) {
  Counts left = demand, supply = stocks;
  StockCuts cuts;
  for (std::size_t longest = 0; longest < left.size();) {
    if (left[longest] == 0) {
      ++longest;
      continue;
    }
    Choice best;
    for (std::size_t k = 0; k < problem.stocks.size(); ++k) {
      const CutStock& stock = problem.stocks[k];
      if (supply[k] == 0 || stock.capacity < problem.sizes[longest]) continue;
      Counts counts = firstFitCut(problem, left, stock.capacity);
      const std::int64_t held = sizeOf(problem, counts);
      Choice choice{k, std::move(counts), held, stock.cost};
      if (choice.beats(best)) best = std::move(choice);
    }
    if (best.counts.empty()) return std::nullopt;
    std::int64_t times = supply[best.stock];
    for (std::size_t i = 0; i < left.size(); ++i)
      if (best.counts[i] > 0) times = std::min(times, left[i] / best.counts[i]);
    for (std::size_t i = 0; i < left.size(); ++i) left[i] -= best.counts[i] * times;
    supply[best.stock] -= times;
    cuts.push_back({best.stock, times, std::move(best.counts)});
  }
  return cuts;
}

}  // namespace ribwright
