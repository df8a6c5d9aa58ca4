// Which stocks to take, and how many of each: the cheapest choice that nothing known so far refutes.
#pragma once

#include <optional>

#include "core/cutting/piece_points.h"

namespace ribwright {

class StockChoice {
 public:
  explicit StockChoice(const CutProblem& problem);

  // Choices that hold fewer points than the whole demand is worth are out.
  void add(const PiecePoints& prices);
  // So many stocks, and fewer of each, were searched through and do not serve.
  void forbid(const Counts& stocks);

  // Stocks that cost nothing are all taken. Of several at one cost that which leaves the most room. Nothing: no choice
  // below that cost is left.
  std::optional<Counts> cheapest(std::int64_t below, CuttingWork& work);
  // As cheapest, those set aside included.
  std::optional<Counts> cheapestOfAll(std::int64_t below, CuttingWork& work);
  // No choice that costs no more than this is left but those that were given.
  std::int64_t lookedUpTo() const { return frontier_; }
  // Some choice that is left and costs less, whichever; knows nothing of those set aside.
  std::optional<Counts> anyBelow(std::int64_t below, CuttingWork& work);
  // Leaves out such a choice for now, which was looked at without an answer, or none any more.
  void setAside(const Counts& stocks);
  void takeBack();
  std::int64_t costOf(const Counts& stocks) const;

 private:
  struct Row {
    std::vector<std::int64_t> most;  // of each stock
    std::int64_t need;               // what stocks that cost have to hold
    // From this place of order_ on: the most points for the money.
    std::vector<std::size_t> bestFrom;
  };
  struct Choice {
    Counts stocks;
    std::int64_t cost;
    double room;  // of the row that leaves the least, in parts of what is needed; < 0: refuted
    bool aside;
  };
  struct Range {
    std::int64_t fewest, most;
  };
  double roomIn(const Row& row, const Counts& stocks) const;
  const Choice* cheapestOpen(std::int64_t below, bool asideToo) const;
  bool openNext(std::int64_t below, CuttingWork& work);
  void searchUpTo(std::int64_t cost);
  void choose(std::size_t at, std::int64_t cost);
  void chooseLast(std::size_t stock, std::int64_t cost);
  Range rangeOf(std::size_t at, std::int64_t cost) const;
  bool tooDear(std::size_t at, std::int64_t cost);
  bool holdsEnough() const;
  bool isKnown(std::int64_t cost) const;
  void offer(std::int64_t cost);
  void take(std::size_t stock, std::int64_t count);

  const CutProblem& problem_;
  std::vector<std::size_t> order_;  // stocks that cost something
  std::int64_t commonCost_ = 0;
  std::vector<Row> rows_;
  std::vector<Counts> forbidden_;
  std::vector<Choice> open_;  // not refuted; all there are up to frontier_, and perhaps some beyond
  std::int64_t frontier_ = -1;

  // Of the search for more.
  Counts taken_;
  std::vector<std::int64_t> needs_;
  std::vector<Counts> found_;  // at bestCost_
  std::int64_t bestCost_ = 0, steps_ = 0;
  bool anyWillDo_ = false;
};

}  // namespace ribwright
