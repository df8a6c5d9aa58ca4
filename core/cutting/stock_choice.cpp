#include "core/cutting/stock_choice.h"

#include <algorithm>
#include <cmath>

namespace ribwright {
namespace {

std::int64_t timesUp(std::int64_t whole, std::int64_t part) { return (whole + part - 1) / part; }

}  // namespace

StockChoice::StockChoice(const CutProblem& problem) : problem_(problem) {
  for (std::size_t k = 0; k < problem.stocks.size(); ++k)
    if (problem.stocks[k].cost > 0) order_.push_back(k);
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
  if (cost > bestCost_ || (steps_ > mostSteps_ && cost == bestCost_)) return true;
  steps_ += static_cast<std::int64_t>(rows_.size());
  const std::int64_t most = bestCost_ - (steps_ > mostSteps_ ? 1 : 0);
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
    if (rows_[l].need > 0)
      room = std::min(room, static_cast<double>(-needs_[l]) / static_cast<double>(rows_[l].need));
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

void StockChoice::choose(std::size_t at, std::int64_t cost) {
  if (tooDear(at, cost)) return;
  const std::size_t stock = order_[at];
  if (at + 1 == order_.size()) return chooseLast(stock, cost);
  const CutStock& of = problem_.stocks[stock];
  while (taken_[stock] <= of.supply) {
    choose(at + 1, cost + taken_[stock] * of.cost);
    if (holdsEnough() && !isForbidden()) break;
    take(stock, 1);
    if (cost + taken_[stock] * of.cost > bestCost_) break;
  }
  take(stock, -taken_[stock]);
}

std::optional<Counts> StockChoice::cheapestOfAll(std::int64_t below, CuttingWork& work) {
  std::vector<Counts> aside;
  std::swap(aside, aside_);
  auto found = cheapest(below, work);
  std::swap(aside, aside_);
  return found;
}

std::optional<Counts> StockChoice::cheapest(std::int64_t below, CuttingWork& work) {
  taken_.assign(problem_.stocks.size(), 0);
  for (std::size_t k = 0; k < problem_.stocks.size(); ++k)
    if (problem_.stocks[k].cost == 0) taken_[k] = problem_.stocks[k].supply;
  mostSteps_ = 100'000;
  needs_.clear();
  for (const Row& row : rows_) needs_.push_back(row.need);
  best_.clear();
  bestCost_ = below - 1;
  steps_ = 0;
  if (!order_.empty())
    choose(0, 0);
  else
    offer(0);
  work.spend(4 * steps_);
  if (best_.empty()) return std::nullopt;
  return best_;
}

}  // namespace ribwright
