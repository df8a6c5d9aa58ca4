#include "core/cutting/stock_cutter.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/cutting/cut_problem.h"
#include "core/cutting/first_plans.h"
#include "core/cutting/plan_search.h"
#include "core/cutting/stock_choice.h"
#include "core/cutting/whole_points.h"

namespace ribwright {
namespace {

class Cutter {
 public:
  Cutter(const CutProblem& problem, CuttingWork& work)
      : problem_(problem), work_(work), choice_(problem), search_(problem, pool_, work) {
    for (const CutStock& stock : problem.stocks) supply_.push_back(stock.supply);
  }

  void run() {
    if (auto first = firstFitPlan(problem_, problem_.demand, supply_, work_)) take(std::move(*first));
    lookAtLengths();
    if (settled()) return;
    solveFractions();
    if (!settled() && problem_.stocks.size() > 1) roundCheaply();
    for (int patience = 0; !settled() && !work_.ended(); ++patience)
      if (!lookAtChoices(patience)) return;
  }

  bool hasPlan() const { return best_.has_value(); }
  bool serves() const { return serves_; }
  const StockCuts& best() const { return *best_; }
  std::int64_t bound() const { return bound_; }
  const Proof& proof() const { return proof_; }

 private:
  static constexpr int lastRounding = 2;

  std::int64_t total() const { return best_ ? costOf(problem_, *best_) : INT64_MAX; }
  bool settled() const { return !serves_ || (best_ && total() == bound_); }

  void take(StockCuts cuts) {
    for (const StockCut& cut : cuts) {
      Counts counts = cut.counts;
      fillUp(problem_, problem_.demand, cut.stock, counts);
      pool_.add(cut.stock, counts);
    }
    if (best_ && costOf(problem_, cuts) >= total()) return;
    best_ = std::move(cuts);
    work_.found(total());
  }

  void add(const PiecePoints& prices) {
    choice_.add(prices);
    search_.add(prices);
    proof_.lists.push_back(prices);
    raiseBound();
  }

  void raiseBound() {
    cheapest_ = choice_.cheapestOfAll(total(), work_);
    if (!cheapest_ && !best_ && !work_.ended()) serves_ = false;
    const bool lookedAtAll = !work_.ended() || cheapest_;
    bound_ = std::max(bound_, cheapest_     ? choice_.costOf(*cheapest_)
                              : lookedAtAll ? total()
                                            : std::min(total(), choice_.lookedUpTo() + 1));
    work_.proved(bound_);
  }

  // Points for length alone: the shortest proof there is.
  void lookAtLengths() {
    if (auto byLength = priced(problem_, problem_.demand, Counts(supply_.size(), 1), problem_.sizes, work_))
      add(byLength->prices);
  }

  void solveFractions() {
    std::optional<PiecePoints> best;
    double bestBound = 0;
    const LpAsked asked{problem_, problem_.demand, supply_, Aim::LeastCost, true};
    solveOverPatterns(asked, pool_, work_, [&](const PiecePoints& prices, double cost) {
      const double bound = boundOf(prices);
      if (bound > bestBound) {
        bestBound = bound;
        best = prices;
      }
      return best_ && bestBound > static_cast<double>(total()) - 1 + 1e-9 && cost > 0;
    });
    if (best) add(*best);
  }

  // A good plan to begin with, whether or not it is the best.
  void roundCheaply() {
    if (search_.roundCheaply({problem_.demand, supply_}) == Served::Yes) take(search_.cuts());
  }

  // About what stocks cost that hold enough; only to tell which list is the best.
  double boundOf(const PiecePoints& prices) const {
    double need = static_cast<double>(worthOf(prices.points, problem_.demand)), rate = 0;
    for (std::size_t k = 0; k < problem_.stocks.size(); ++k) {
      const double most = static_cast<double>(prices.most[k]), cost = static_cast<double>(problem_.stocks[k].cost);
      if (cost == 0) need -= most * static_cast<double>(problem_.stocks[k].supply);
      if (cost > 0) rate = std::max(rate, most / cost);
    }
    return rate > 0 ? need / rate : 0;
  }

  // Looks at each choice that may serve for less than the best plan, the cheapest first, with more and more patience.
  // False: all there is to try was tried.
  bool lookAtChoices(int patience) {
    bool wantsMore = false;
    choice_.takeBack();
    for (auto next = cheapest_; next && !work_.ended(); next = choice_.cheapest(total(), work_)) {
      work_.allot(stepsAt(patience));
      const Served served = lookAt(*next, patience);
      wantsMore = wantsMore || (served == Served::Unknown && patience < 12);
      work_.allotAll();
      if (served == Served::Yes) take(search_.cuts());
      if (served == Served::No) refute(*next);
      if (served == Served::Unknown) choice_.setAside(*next);
      if (settled()) return true;
    }
    choice_.takeBack();
    raiseBound();
    return wantsMore;
  }

  static std::int64_t stepsAt(int patience) { return std::int64_t(20'000'000) << std::min(2 * patience, 20); }

  Served lookAt(const Counts& stocks, int patience) {
    const CutState state{problem_.demand, stocks};
    return patience <= lastRounding || patience % 2 == 0 ? search_.round(state, patience) : search_.tryAll(state);
  }

  void refute(const Counts& stocks) {
    if (const auto& found = search_.refutation()) {
      if (auto whole = priced(problem_, problem_.demand, Counts(stocks.size(), 1), found->points, work_))
        return add(whole->prices);
      return;
    }
    choice_.forbid(stocks);
    proof_.searched.push_back(stocks);
    raiseBound();
  }

  const CutProblem& problem_;
  CuttingWork& work_;
  Counts supply_;
  PatternPool pool_;
  StockChoice choice_;
  PlanSearch search_;
  std::optional<StockCuts> best_;
  std::optional<Counts> cheapest_;
  Proof proof_;
  std::int64_t bound_ = 0;
  bool serves_ = true;
};

// The list in the list's own lines, for all its stocks. Nothing: too much work.
std::optional<PriceList> listOf(const ReducedList& given, const PiecePoints& prices, CuttingWork& work) {
  PriceList listed;
  for (const int size : given.sizeOf)
    listed.points.push_back(size < 0 ? 0 : prices.points[static_cast<std::size_t>(size)]);
  for (std::size_t k = 0; k < given.allCapacities.size(); ++k) {
    const auto known = std::find(given.stockOf.begin(), given.stockOf.end(), static_cast<int>(k));
    if (known != given.stockOf.end()) {
      listed.mostPerStock.push_back(prices.most[static_cast<std::size_t>(known - given.stockOf.begin())]);
      continue;
    }
    const CutProblem& problem = given.problem;
    const auto most = bestKnapsack({problem.sizes, problem.demand, prices.points, given.allCapacities[k]}, work);
    if (!most) return std::nullopt;
    listed.mostPerStock.push_back(most->points);
  }
  return listed;
}

// Work for the proof's sake, beside what the plan took: it is to be shown, however little was left.
constexpr std::int64_t stepsForProof = 20'000'000;

void putProof(CuttingPlan& plan, const ReducedList& given, const Cutter& cutter) {
  CuttingOptions options;
  options.effort = stepsForProof;
  CuttingWork work(options);
  const Proof proof = inFewPoints(given.problem, cutter.proof(), cutter.bound(), work);
  options.effort = CuttingOptions{}.effort;
  CuttingWork listing(options);
  for (const PiecePoints& prices : proof.lists)
    if (auto listed = listOf(given, prices, listing)) plan.proof.push_back(std::move(*listed));
  const bool whole = plan.proof.size() == proof.lists.size();
  plan.bound = whole ? std::min(plan.total, cutter.bound()) : 0;
  plan.provedBySearch = !proof.searched.empty();
}

CuttingPlan planOf(const CuttingList& list, const ReducedList& given, const Cutter& cutter) {
  CuttingPlan plan;
  plan.patterns = patternsOf(list, given, cutter.best());
  for (const CutPattern& pattern : plan.patterns)
    plan.total += costOf(list, static_cast<std::size_t>(pattern.stock)) * pattern.times;
  putProof(plan, given, cutter);
  return plan;
}

}  // namespace

Outcome<CuttingPlan> cutStock(const CuttingList& list, const CuttingOptions& options) {
  if (std::vector<Fault> faults = faultsOf(list); !faults.empty()) return faults;
  const ReducedList given = reduced(list);
  if (given.problem.sizes.empty()) return CuttingPlan{};
  CuttingWork work(options);
  Cutter cutter(given.problem, work);
  cutter.run();
  if (!cutter.serves()) return Fault{"stocks", "hold too little for what is wanted; state more supply"};
  if (!cutter.hasPlan())
    return Fault{"stocks", "no plan was found with so little effort; state more supply, or allow more effort"};
  return planOf(list, given, cutter);
}

}  // namespace ribwright
