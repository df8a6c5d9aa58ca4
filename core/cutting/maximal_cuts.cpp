#include "core/cutting/maximal_cuts.h"

#include <algorithm>

namespace ribwright {
namespace {

constexpr std::size_t mostCuts = 20'000;
constexpr std::int64_t mostSteps = 2'000'000;

struct Widened {
  std::int64_t size, points, bound;
  std::size_t index;
  std::size_t densest;  // of the items from this one on
};

// One stock filled, the longest first.
class Filling {
 public:
  Filling(const CutProblem& problem, const Counts& demand, const std::optional<PiecePoints>& prices)
      : counts_(demand.size(), 0) {
    for (std::size_t i = 0; i < demand.size(); ++i)
      if (demand[i] > 0) items_.push_back({problem.sizes[i], prices ? prices->points[i] : 0, demand[i], i, 0});
    for (std::size_t i = items_.size(); i-- > 0;) {
      items_[i].densest = i;
      if (i + 1 == items_.size()) continue;
      const Widened& best = items_[items_[i + 1].densest];
      if (Int128(best.points) * items_[i].size > Int128(items_[i].points) * best.size)
        items_[i].densest = items_[i + 1].densest;
    }
  }

  // Fills of the stock that hold the longest piece and at least so many points. False: too many.
  bool all(std::size_t stock, std::int64_t capacity, Int128 least, std::vector<StockCut>& found) {
    stock_ = stock;
    least_ = least;
    found_ = &found;
    const Widened& longest = items_.front();
    if (longest.size > capacity) return true;
    for (std::int64_t count = std::min(longest.bound, capacity / longest.size); count >= 1; --count) {
      counts_[longest.index] = count;
      const std::int64_t unused = count < longest.bound ? longest.size : INT64_MAX;
      go(1, capacity - count * longest.size, count * longest.points, unused);
    }
    counts_[longest.index] = 0;
    return found.size() <= mostCuts && steps_ <= mostSteps;
  }
  std::int64_t steps() const { return steps_; }

 private:
  // `unused`: the smallest size of which a piece is left out.
  void go(std::size_t at, std::int64_t room, Int128 points, std::int64_t unused) {
    if (++steps_ > mostSteps || found_->size() > mostCuts) return;
    if (at == items_.size()) {
      if (room < unused && points >= least_) found_->push_back({stock_, 1, counts_});
      return;
    }
    const Widened& densest = items_[items_[at].densest];
    if ((least_ - points) * densest.size > Int128(room) * densest.points) return;
    const Widened& item = items_[at];
    for (std::int64_t count = std::min(item.bound, room / item.size); count >= 0; --count) {
      counts_[item.index] = count;
      go(at + 1, room - count * item.size, points + Int128(count) * item.points,
         count < item.bound ? item.size : unused);
    }
    counts_[item.index] = 0;
  }

  std::vector<Widened> items_;
  Counts counts_;
  std::size_t stock_ = 0;
  Int128 least_ = 0;
  std::vector<StockCut>* found_ = nullptr;
  std::int64_t steps_ = 0;
};

double likelihood(const StockCut& cut, const std::vector<LpCut>& likely) {
  for (const LpCut& one : likely)
    if (one.stock == cut.stock && one.counts == cut.counts) return one.times;
  return 0;
}

void sortByHope(std::vector<StockCut>& cuts, const std::vector<LpCut>& likely,
                const std::optional<PiecePoints>& prices) {
  struct Key {
    double likely;
    Int128 slack;
    std::size_t index;
  };
  std::vector<Key> keys;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    const Int128 slack = prices ? prices->most[cuts[i].stock] - worthOf(prices->points, cuts[i].counts) : 0;
    keys.push_back({likelihood(cuts[i], likely), slack, i});
  }
  std::stable_sort(keys.begin(), keys.end(), [](const Key& a, const Key& b) {
    return a.likely != b.likely ? a.likely > b.likely : a.slack < b.slack;
  });
  std::vector<StockCut> sorted;
  for (const Key& key : keys) sorted.push_back(std::move(cuts[key.index]));
  cuts = std::move(sorted);
}

}  // namespace

MaximalCuts maximalCuts(const CutProblem& problem, const Counts& demand, const Counts& stocks,
                        const std::optional<PiecePoints>& prices, const std::vector<LpCut>& likely, CuttingWork& work) {
  MaximalCuts all;
  Filling filling(problem, demand, prices);
  const Int128 spare = prices ? mostOf(*prices, stocks) - worthOf(prices->points, demand) : 0;
  for (std::size_t k = 0; k < stocks.size(); ++k) {
    if (stocks[k] == 0) continue;
    const Int128 least = prices ? prices->most[k] - spare : 0;
    if (!filling.all(k, problem.stocks[k].capacity, least, all.cuts)) all.complete = false;
  }
  work.spend(10 * filling.steps());
  sortByHope(all.cuts, likely, prices);
  return all;
}

}  // namespace ribwright
