#include "core/cutting/first_plans.h"

#include <algorithm>

namespace ribwright {
namespace {

struct Choice {
  std::size_t stock = 0;
  Counts counts{};  // from the longest that is left on
  std::int64_t held = 0, cost = 0;

  // Cheaper for what it holds; of equal ones, what holds more.
  bool beats(const Choice& other) const {
    if (other.counts.empty()) return true;
    const Int128 mine = Int128(cost) * other.held, its = Int128(other.cost) * held;
    return mine != its ? mine < its : held > other.held;
  }
};

class FirstFit {
 public:
  FirstFit(const CutProblem& problem, const Counts& demand, const Counts& stocks)
      : problem_(problem), left_(demand), supply_(stocks) {
    for (std::size_t i = 0; i < left_.size(); ++i) lacking_ += Int128(left_[i]) * problem.sizes[i];
    for (std::size_t k = 0; k < supply_.size(); ++k) room_ += Int128(supply_[k]) * problem.stocks[k].capacity;
  }

  std::optional<StockCuts> plan() {
    StockCuts cuts;
    while (longest_ < left_.size()) {
      if (left_[longest_] == 0) {
        ++longest_;
        continue;
      }
      const Choice best = lacking_ > room_ ? Choice{} : bestChoice();
      if (best.counts.empty()) return std::nullopt;
      cuts.push_back(taken(best));
    }
    return cuts;
  }
  std::int64_t steps() const { return steps_; }

 private:
  // Longest first, never more than is left.
  Choice filled(std::size_t stock) {
    std::int64_t room = problem_.stocks[stock].capacity;
    Choice choice{stock, Counts(left_.size() - longest_, 0), room, problem_.stocks[stock].cost};
    for (std::size_t i = longest_; i < left_.size() && room >= problem_.sizes.back(); ++i) {
      ++steps_;
      if (left_[i] == 0 || problem_.sizes[i] > room) continue;
      const std::int64_t count = std::min(left_[i], room / problem_.sizes[i]);
      choice.counts[i - longest_] = count;
      room -= count * problem_.sizes[i];
    }
    choice.held -= room;
    return choice;
  }

  Choice bestChoice() {
    Choice best;
    for (std::size_t k = 0; k < problem_.stocks.size(); ++k) {
      if (supply_[k] == 0 || problem_.stocks[k].capacity < problem_.sizes[longest_]) continue;
      Choice choice = filled(k);
      if (choice.beats(best)) best = std::move(choice);
    }
    return best;
  }

  StockCut taken(const Choice& choice) {
    StockCut cut{choice.stock, supply_[choice.stock], Counts(left_.size(), 0)};
    for (std::size_t i = longest_; i < left_.size(); ++i) {
      cut.counts[i] = choice.counts[i - longest_];
      if (cut.counts[i] > 0) cut.times = std::min(cut.times, left_[i] / cut.counts[i]);
    }
    for (std::size_t i = longest_; i < left_.size(); ++i) left_[i] -= cut.counts[i] * cut.times;
    supply_[choice.stock] -= cut.times;
    lacking_ -= Int128(choice.held) * cut.times;
    room_ -= Int128(problem_.stocks[choice.stock].capacity) * cut.times;
    steps_ += static_cast<std::int64_t>(left_.size());
    return cut;
  }

  const CutProblem& problem_;
  Counts left_, supply_;
  Int128 lacking_ = 0, room_ = 0;
  std::size_t longest_ = 0;
  std::int64_t steps_ = 0;
};

}  // namespace

std::optional<StockCuts> firstFitPlan(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                                      CuttingWork& work) {
  FirstFit fit(problem, demand, stocks);
  auto plan = fit.plan();
  work.spend(2 * fit.steps());
  return plan;
}

}  // namespace ribwright
