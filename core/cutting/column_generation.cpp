#include "core/cutting/column_generation.h"

#include <algorithm>
#include <cmath>

#include "core/cutting/pattern_lp.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

constexpr std::int64_t pointScale = std::int64_t(1) << 28;

class Generation {
 public:
  Generation(const LpAsked& asked, PatternPool& pool, CuttingWork& work)
      : asked_(asked), pool_(pool), work_(work), lp_(makeRows()) {
    for (const PatternPool::Pattern& pattern : pool_.patterns())
      if (asked_.stocks[pattern.stock] > 0) add(pattern.stock, trimmed(pattern.counts));
  }

  LpAnswer run(const std::function<bool(const PiecePoints&, double)>& watch) {
    for (;;) {
      if (!solve()) return {};
      if (asked_.aim == Aim::ServeWithin && lp_.uncoveredCost() < 1e-3 * leastUncovered_) return solved();
      auto offered = priced(asked_.problem, asked_.demand, stocksToPrice(), wholePoints(prices(), pointScale), work_);
      if (!offered) return {};
      if (watch(offered->prices, lp_.objective() * dearest_)) return {LpAnswer::Kind::Ended, {}};
      if (!takeBest(*offered)) return solved();
    }
  }

 private:
  PatternLp makeRows() {
    const CutProblem& problem = asked_.problem;
    for (const CutStock& stock : problem.stocks) dearest_ = std::max(dearest_, static_cast<double>(stock.cost));
    std::vector<double> demand, uncovered, limits;
    for (std::size_t i = 0; i < problem.kinds(); ++i) {
      if (asked_.demand[i] == 0) continue;
      sizes_.push_back(i);
      demand.push_back(static_cast<double>(asked_.demand[i]));
      uncovered.push_back(uncoveredCost(i));
      leastUncovered_ = std::min(leastUncovered_, uncovered.back());
    }
    for (std::size_t k = 0; k < problem.stocks.size(); ++k) {
      limitRow_.push_back(sizes_.size() + limits.size());
      isLimited_.push_back(asked_.aim == Aim::ServeWithin || problem.stocks[k].supply < pieces());
      if (isLimited_.back()) limits.push_back(static_cast<double>(asked_.stocks[k]));
    }
    return PatternLp(demand, uncovered, limits);
  }

  std::int64_t pieces() const {
    std::int64_t pieces = 0;
    for (const std::int64_t count : asked_.problem.demand) pieces += count;
    return pieces;
  }

  // More than any plan would pay for the piece, or its size where only serving counts.
  double uncoveredCost(std::size_t size) const {
    const CutProblem& problem = asked_.problem;
    if (asked_.aim == Aim::ServeWithin)
      return static_cast<double>(problem.sizes[size]) / static_cast<double>(problem.sizes[0]);
    double cheapest = 4;
    for (const CutStock& stock : problem.stocks)
      if (stock.capacity >= problem.sizes[size] && stock.supply >= pieces())
        cheapest = std::min(cheapest, static_cast<double>(stock.cost) / dearest_);
    return cheapest;
  }

  Counts trimmed(const Counts& counts) const {
    Counts trimmed(counts.size());
    for (std::size_t i = 0; i < counts.size(); ++i) trimmed[i] = std::min(counts[i], asked_.demand[i]);
    return trimmed;
  }

  void add(std::size_t stock, Counts counts) {
    PatternLp::Entries entries;
    for (std::size_t row = 0; row < sizes_.size(); ++row)
      if (counts[sizes_[row]] > 0) entries.emplace_back(row, static_cast<double>(counts[sizes_[row]]));
    if (entries.empty()) return;
    if (isLimited_[stock]) entries.emplace_back(limitRow_[stock], 1.0);
    lp_.add(std::move(entries), columnCost(stock));
    cuts_.push_back({stock, std::move(counts), 0});
  }

  double columnCost(std::size_t stock) const {
    return asked_.aim == Aim::ServeWithin ? 0 : static_cast<double>(asked_.problem.stocks[stock].cost) / dearest_;
  }

  bool solve() {
    const std::int64_t before = lp_.pivots(), rows = static_cast<std::int64_t>(sizes_.size() + asked_.stocks.size());
    const bool solved = lp_.solve();
    work_.spend((lp_.pivots() - before + 1) * (rows * rows + 8 * static_cast<std::int64_t>(cuts_.size())));
    return solved && !work_.stopped();
  }

  std::vector<double> prices() const {
    std::vector<double> prices(asked_.problem.kinds(), 0.0);
    for (std::size_t row = 0; row < sizes_.size(); ++row) prices[sizes_[row]] = lp_.prices()[row];
    return prices;
  }

  Counts stocksToPrice() const { return asked_.wholeProblem ? Counts(asked_.stocks.size(), 1) : asked_.stocks; }

  // Takes each stock's best pattern that makes the whole cheaper. False: there is none.
  bool takeBest(const PricedStocks& offered) {
    bool taken = false;
    const std::vector<double> worth = prices();
    for (std::size_t k = 0; k < offered.fills.size(); ++k) {
      if (asked_.stocks[k] == 0) continue;
      double price = columnCost(k), gain = 0;
      if (isLimited_[k]) price -= lp_.prices()[limitRow_[k]];
      for (std::size_t i = 0; i < worth.size(); ++i) gain += worth[i] * static_cast<double>(offered.fills[k][i]);
      if (gain <= price + 1e-7 * std::max(gain, price)) continue;
      Counts counts = offered.fills[k];
      fillUp(asked_.problem, asked_.demand, k, counts);
      if (!isThere(k, counts)) {
        pool_.add(k, counts);
        add(k, std::move(counts));
        taken = true;
      }
    }
    return taken;
  }

  bool isThere(std::size_t stock, const Counts& counts) const {
    return std::any_of(cuts_.begin(), cuts_.end(),
                       [&](const LpCut& cut) { return cut.stock == stock && cut.counts == counts; });
  }

  LpAnswer solved() {
    LpAnswer answer{LpAnswer::Kind::Solved, {}};
    const std::vector<double> values = lp_.values();
    for (std::size_t j = 0; j < values.size(); ++j) {
      if (values[j] < 1e-5) continue;
      answer.cuts.push_back(cuts_[j]);
      answer.cuts.back().times = values[j];
    }
    return answer;
  }

  const LpAsked& asked_;
  PatternPool& pool_;
  CuttingWork& work_;
  std::vector<std::size_t> sizes_, limitRow_;  // LP row -> size; stock -> LP row
  std::vector<char> isLimited_;
  double leastUncovered_ = INFINITY, dearest_ = 1;  // costs in the LP are parts of the dearest
  std::vector<LpCut> cuts_;                         // parallel to the LP's columns
  PatternLp lp_;
};

}  // namespace

LpAnswer solveOverPatterns(const LpAsked& asked, PatternPool& pool, CuttingWork& work,
                           const std::function<bool(const PiecePoints&, double cost)>& watch) {
  return Generation(asked, pool, work).run(watch);
}

}  // namespace ribwright
