// Which stocks to take, and how many of each: the cheapest choice that nothing known so far refutes.
#pragma once

#include <optional>

#include "core/cutting/prices.h"

namespace ribwright {

class StockChoice {
 public:
  explicit StockChoice(const CutProblem& problem);

  // Choices that hold fewer points than the whole demand is worth are out.
  void add(const Prices& prices);
  // So many stocks, and fewer of each, were searched through and do not serve.
  void forbid(const Counts& stocks) { forbidden_.push_back(stocks); }

  // Stocks that cost nothing are all taken. Of several at one cost that which leaves the most room. Nothing: no choice
  // below that cost is left.
  std::optional<Counts> cheapest(std::int64_t below, CuttingWork& work);
  // As cheapest, those set aside included.
  std::optional<Counts> cheapestOfAll(std::int64_t below, CuttingWork& work);
  // Leaves out such choices for now, which were looked at without an answer, or none any more.
  void setAside(const Counts& stocks) { aside_.push_back(stocks); }
  void takeBack() { aside_.clear(); }
  std::int64_t costOf(const Counts& stocks) const;

 private:
  struct Row {
    std::vector<std::int64_t> most;  // of each stock
    std::int64_t need;               // what stocks that cost have to hold
    // From this place of order_ on: the most points for the money.
    std::vector<std::size_t> bestFrom;
  };
  void choose(std::size_t at, std::int64_t cost);
  void chooseLast(std::size_t stock, std::int64_t cost);
  bool tooDear(std::size_t at, std::int64_t cost);
  bool holdsEnough() const;
  bool isForbidden() const;
  double room() const;
  void offer(std::int64_t cost);
  void take(std::size_t stock, std::int64_t count);

  const CutProblem& problem_;
  std::vector<std::size_t> order_;  // stocks that cost something
  std::vector<Row> rows_;
  std::vector<Counts> forbidden_, aside_;

  // Of the choice that is being made.
  Counts taken_, best_;
  std::vector<std::int64_t> needs_;
  double bestRoom_ = 0;
  std::int64_t bestCost_ = 0, steps_ = 0, mostSteps_ = 0;
};

}  // namespace ribwright
