#include "core/cutting/plan_search.h"

#include <algorithm>
#include <cmath>

#include "core/cutting/first_plans.h"
#include "core/cutting/maximal_cuts.h"

namespace ribwright {
namespace {

constexpr double nearlyWhole = 1e-4;

std::int64_t wholeOf(double times) { return static_cast<std::int64_t>(std::floor(times + nearlyWhole)); }

Counts keyOf(const CutState& state) {
  Counts key = state.demand;
  key.insert(key.end(), state.stocks.begin(), state.stocks.end());
  return key;
}

// The largest fraction first.
void sortFractions(std::vector<LpCut>& cuts) {
  std::stable_sort(cuts.begin(), cuts.end(), [](const LpCut& a, const LpCut& b) {
    return std::abs(a.times - b.times) > 1e-9 ? a.times > b.times : a.counts > b.counts;
  });
}

}  // namespace

bool CutState::done() const {
  return std::all_of(demand.begin(), demand.end(), [](std::int64_t count) { return count == 0; });
}

void CutState::take(std::size_t stock, std::int64_t times, const Counts& counts) {
  stocks[stock] -= times;
  for (std::size_t i = 0; i < demand.size(); ++i) demand[i] = std::max<std::int64_t>(0, demand[i] - times * counts[i]);
}

bool PlanSearch::refutedByKnown(const CutState& state) {
  work_.spend(static_cast<std::int64_t>(known_.size() * state.demand.size()));
  return std::any_of(known_.begin(), known_.end(),
                     [&](const PiecePoints& prices) { return refutes(prices, state.demand, state.stocks); });
}

void PlanSearch::cut(CutState& state, const LpCut& cut, std::int64_t times) {
  cuts_.push_back({cut.stock, times, cut.counts});
  state.take(cut.stock, times, cut.counts);
}

// Whether the rest fits without thinking.
bool PlanSearch::fits(const CutState& state) {
  const auto rest = firstFitPlan(problem_, state.demand, state.stocks, work_);
  if (rest) cuts_.insert(cuts_.end(), rest->begin(), rest->end());
  return rest.has_value();
}

Aim PlanSearch::servingAim() const { return problem_.stocks.size() == 1 ? Aim::LeastCost : Aim::ServeWithin; }

PlanSearch::Look PlanSearch::look(const CutState& state, Aim aim) {
  Look look;
  if (state.done()) {
    look.served = Served::Yes;
  } else if (refutedByKnown(state)) {
    look.served = Served::No;
  } else if (aim == servingAim() && fits(state)) {
    look.served = Served::Yes;
  } else {
    LpAnswer answer = solveOverPatterns({problem_, state.demand, state.stocks, aim}, pool_, work_,
                                        [&](const PiecePoints& prices, double) {
                                          look.prices = prices;
                                          return refutes(prices, state.demand, state.stocks);
                                        });
    if (answer.kind == LpAnswer::Kind::Ended) look.served = Served::No;
    look.fractions = std::move(answer.cuts);
    sortFractions(look.fractions);
  }
  return look;
}

Served PlanSearch::round(const CutState& state, int seconds) {
  cuts_.clear();
  refutation_.reset();
  Look first = look(state, servingAim());
  if (first.served == Served::No) refutation_ = std::move(first.prices);
  if (first.served != Served::Unknown) return first.served;
  return roundFrom(state, first, servingAim(), seconds);
}

Served PlanSearch::roundCheaply(const CutState& state) {
  cuts_.clear();
  const Served served = roundFrom(state, look(state, Aim::LeastCost), Aim::LeastCost, 0);
  return served == Served::No ? Served::Unknown : served;
}

Served PlanSearch::roundFrom(const CutState& state, const Look& here, Aim aim, int seconds) {
  if (here.served != Served::Unknown) return here.served;
  if (work_.stopped() || here.fractions.empty()) return Served::Unknown;
  const std::size_t before = cuts_.size();
  CutState next = state;
  if (here.fractions.front().times >= 1 - nearlyWhole) {
    for (const LpCut& fraction : here.fractions) {
      const std::int64_t times = std::min(wholeOf(fraction.times), next.stocks[fraction.stock]);
      if (times > 0) cut(next, fraction, times);
    }
    if (roundFrom(next, look(next, aim), aim, seconds) == Served::Yes) return Served::Yes;
    cuts_.resize(before);
    return Served::Unknown;
  }
  const std::size_t choices = std::min(here.fractions.size(), static_cast<std::size_t>(seconds) + 1);
  for (std::size_t choice = 0; choice < choices; ++choice) {
    next = state;
    const LpCut& fraction = here.fractions[choice];
    if (next.stocks[fraction.stock] == 0) continue;
    cut(next, fraction, 1);
    if (roundFrom(next, look(next, aim), aim, seconds - static_cast<int>(choice)) == Served::Yes) return Served::Yes;
    cuts_.resize(before);
  }
  return Served::Unknown;
}

Served PlanSearch::tryAll(const CutState& state) {
  cuts_.clear();
  refutation_.reset();
  failed_.clear();
  return tryFrom(state);
}

Served PlanSearch::tryFrom(const CutState& state) {
  if (failed_.contains(keyOf(state))) return Served::No;
  work_.spend(500);  // to remember it
  const std::size_t before = cuts_.size();
  const Look here = look(state, servingAim());
  Served served = here.served;
  if (served == Served::Unknown && !work_.stopped()) served = tryEach(state, here);
  if (served == Served::No) failed_.insert(keyOf(state));
  if (served != Served::Yes) cuts_.resize(before);
  return served;
}

// Some stock holds the longest piece that is left; each way to fill it is tried, those first that the fractions are
// made of.
Served PlanSearch::tryEach(const CutState& state, const Look& here) {
  const MaximalCuts ways = maximalCuts(problem_, state.demand, state.stocks, here.prices, here.fractions, work_);
  bool allTried = ways.complete;
  for (const StockCut& way : ways.cuts) {
    CutState next = state;
    next.take(way.stock, 1, way.counts);
    cuts_.push_back(way);
    const Served served = tryFrom(next);
    if (served == Served::Yes) return Served::Yes;
    cuts_.pop_back();
    if (served == Served::Unknown) allTried = false;
    if (work_.stopped()) return Served::Unknown;
  }
  return allTried ? Served::No : Served::Unknown;
}

}  // namespace ribwright
