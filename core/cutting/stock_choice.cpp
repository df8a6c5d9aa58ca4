#include "core/cutting/stock_choice.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ribwright {
namespace {

// Steps after which one of several equally cheap choices is as good as another.
constexpr std::int64_t mostTieSteps = 100'000;

std::int64_t timesUp(std::int64_t whole, std::int64_t part) { return (whole + part - 1) / part; }

}  // namespace

StockChoice::StockChoice(const CutProblem& problem) : problem_(problem) {
  for (std::size_t k = 0; k < problem.stocks.size(); ++k)
    if (problem.stocks[k].cost > 0) order_.push_back(k);
  for (const std::size_t k : order_) commonCost_ = std::gcd(commonCost_, problem.stocks[k].cost);
  std::stable_sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
    return problem.stocks[a].capacity > problem.stocks[b].capacity;
  });
}

std::int64_t StockChoice::costOf(const Counts& stocks) const {
  std::int64_t cost = 0;
  for (const std::size_t k : order_) cost += problem_.stocks[k].cost * stocks[k];
  return cost;
}

void StockChoice::add(const Prices& prices) {
  Int128 need = worthOf(prices.points, problem_.demand);
  for (std::size_t k = 0; k < problem_.stocks.size(); ++k)
    if (problem_.stocks[k].cost == 0) need -= Int128(prices.most[k]) * problem_.stocks[k].supply;
  Row row{prices.most, static_cast<std::int64_t>(std::max<Int128>(need, 0)), std::vector<std::size_t>(order_.size())};
  for (std::size_t at = order_.size(); at-- > 0;) {
    row.bestFrom[at] = order_[at];
    if (at + 1 == order_.size()) continue;
    const std::size_t a = order_[at], b = row.bestFrom[at + 1];
    const bool bBetter = Int128(row.most[b]) * problem_.stocks[a].cost >= Int128(row.most[a]) * problem_.stocks[b].cost;
    if (bBetter) row.bestFrom[at] = b;
  }
  rows_.push_back(std::move(row));
}

// Whether what is still needed cannot be had for less than the best so far.
bool StockChoice::tooDear(std::size_t at, std::int64_t cost) {
  if (cost > bestCost_ || (steps_ > mostTieSteps && cost == bestCost_)) return true;
  steps_ += static_cast<std::int64_t>(rows_.size());
  const std::int64_t most = bestCost_ - (steps_ > mostTieSteps ? 1 : 0);
  for (std::size_t l = 0; l < rows_.size(); ++l) {
    if (needs_[l] <= 0) continue;
    if (at == order_.size()) return true;
    const std::size_t k = rows_[l].bestFrom[at];
    // cost + need * cost of k / most of k > most
    if (Int128(needs_[l]) * problem_.stocks[k].cost > Int128(most - cost) * rows_[l].most[k]) return true;
  }
  return false;
}

bool StockChoice::holdsEnough() const {
  return std::all_of(needs_.begin(), needs_.end(), [](std::int64_t need) { return need <= 0; });
}

bool StockChoice::isForbidden() const {
  const auto notMore = [&](const Counts& counts) {
    for (std::size_t k = 0; k < counts.size(); ++k)
      if (taken_[k] > counts[k]) return false;
    return true;
  };
  return std::any_of(forbidden_.begin(), forbidden_.end(), notMore) ||
         std::find(aside_.begin(), aside_.end(), taken_) != aside_.end();
}

// Of the list that leaves the least, in parts of what is needed.
double StockChoice::room() const {
  double room = INFINITY;
  for (std::size_t l = 0; l < rows_.size(); ++l)
    if (rows_[l].need > 0) room = std::min(room, static_cast<double>(-needs_[l]) / static_cast<double>(rows_[l].need));
  return room;
}

void StockChoice::offer(std::int64_t cost) {
  if (isForbidden() || tooDear(order_.size(), cost)) return;
  const double roomThen = room();
  if (cost == bestCost_ && !best_.empty() && roomThen <= bestRoom_) return;
  bestCost_ = cost;
  bestRoom_ = roomThen;
  best_ = taken_;
}

void StockChoice::take(std::size_t stock, std::int64_t count) {
  taken_[stock] += count;
  for (std::size_t l = 0; l < rows_.size(); ++l) needs_[l] -= count * rows_[l].most[stock];
}

// The fewest of the last stock that will do.
void StockChoice::chooseLast(std::size_t stock, std::int64_t cost) {
  std::int64_t count = 0;
  for (std::size_t l = 0; l < rows_.size(); ++l)
    if (needs_[l] > 0 && rows_[l].most[stock] > 0) count = std::max(count, timesUp(needs_[l], rows_[l].most[stock]));
  const std::int64_t supply = problem_.stocks[stock].supply;
  if (count > supply) return;
  take(stock, count);
  while (isForbidden() && taken_[stock] < supply) take(stock, 1);
  offer(cost + taken_[stock] * problem_.stocks[stock].cost);
  take(stock, -taken_[stock]);
}

// How many of a stock may be taken so that the rest can still be had for the money, if it were to be had in fractions.
StockChoice::Range StockChoice::rangeOf(std::size_t at, std::int64_t cost) const {
  const std::size_t stock = order_[at];
  const CutStock& of = problem_.stocks[stock];
  const Int128 money = bestCost_ - cost;
  Range range{0, std::min(of.supply, static_cast<std::int64_t>(money / of.cost))};
  for (std::size_t l = 0; l < rows_.size(); ++l) {
    if (needs_[l] <= 0) continue;
    const std::size_t rest = rows_[l].bestFrom[at + 1];
    const Int128 restCost = problem_.stocks[rest].cost, restMost = rows_[l].most[rest];
    // need * restCost <= most * n * restCost + (money - cost * n) * restMost
    const Int128 perPiece = rows_[l].most[stock] * restCost - of.cost * restMost;
    const Int128 lacking = needs_[l] * restCost - money * restMost;
    if (perPiece > 0 && lacking > 0)
      range.fewest = static_cast<std::int64_t>(
          std::max<Int128>(range.fewest, std::min<Int128>((lacking + perPiece - 1) / perPiece, of.supply + 1)));
    if (perPiece < 0 && lacking <= 0)
      range.most = static_cast<std::int64_t>(std::min<Int128>(range.most, lacking / perPiece));
    if (perPiece <= 0 && lacking > 0) range.most = -1;
  }
  return range;
}

void StockChoice::choose(std::size_t at, std::int64_t cost) {
  if (tooDear(at, cost) || (anyWillDo_ && !best_.empty())) return;
  const std::size_t stock = order_[at];
  if (at + 1 == order_.size()) return chooseLast(stock, cost);
  const Range range = rangeOf(at, cost);
  if (range.fewest > range.most) return;
  take(stock, range.fewest);
  while (taken_[stock] <= range.most) {
    choose(at + 1, cost + taken_[stock] * problem_.stocks[stock].cost);
    if (holdsEnough() && !isForbidden()) break;
    take(stock, 1);
  }
  take(stock, -taken_[stock]);
}

// Makes the best choice that costs no more.
void StockChoice::searchUpTo(std::int64_t cost) {
  best_.clear();
  bestCost_ = cost;
  steps_ = 0;
  needs_.clear();
  for (const Row& row : rows_) needs_.push_back(row.need);
  taken_.assign(problem_.stocks.size(), 0);
  for (std::size_t k = 0; k < problem_.stocks.size(); ++k)
    if (problem_.stocks[k].cost == 0) taken_[k] = problem_.stocks[k].supply;
  if (order_.empty())
    offer(0);
  else
    choose(0, 0);
}

std::optional<Counts> StockChoice::cheapest(std::int64_t below, CuttingWork& work) {
  // What is left costs little more than what was cheapest before, so that is where it is looked for first.
  for (std::int64_t step = 0; leastCost_ < below; step = 2 * step + commonCost_) {
    const std::int64_t upTo = std::min(below - 1 - leastCost_, step);
    searchUpTo(leastCost_ + upTo);
    work.spend(4 * steps_);
    if (!best_.empty()) return best_;
    if (upTo == below - 1 - leastCost_ || work.ended()) break;
  }
  return std::nullopt;
}

std::optional<Counts> StockChoice::anyBelow(std::int64_t below, CuttingWork& work) {
  if (below <= 0) return std::nullopt;
  anyWillDo_ = true;
  searchUpTo(below - 1);
  anyWillDo_ = false;
  work.spend(4 * steps_);
  if (best_.empty()) return std::nullopt;
  return best_;
}

std::optional<Counts> StockChoice::cheapestOfAll(std::int64_t below, CuttingWork& work) {
  std::vector<Counts> aside;
  std::swap(aside, aside_);
  auto found = cheapest(below, work);
  std::swap(aside, aside_);
  if (found) leastCost_ = costOf(*found);
  return found;
}

}  // namespace ribwright
