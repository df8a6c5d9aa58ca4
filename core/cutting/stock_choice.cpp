#include "core/cutting/stock_choice.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ribwright {
namespace {

// Of one cost, so many choices are gathered at a time.
constexpr std::size_t mostFound = 50'000;

bool noneMore(const Counts& a, const Counts& b) {
  for (std::size_t k = 0; k < a.size(); ++k)
    if (a[k] > b[k]) return false;
  return true;
}

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

void StockChoice::add(const PiecePoints& prices) {
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
  for (Choice& choice : open_) choice.room = std::min(choice.room, roomIn(row, choice.stocks));
  std::erase_if(open_, [](const Choice& choice) { return choice.room < 0; });
  rows_.push_back(std::move(row));
}

double StockChoice::roomIn(const Row& row, const Counts& stocks) const {
  std::int64_t spare = -row.need;
  for (const std::size_t k : order_) spare += row.most[k] * stocks[k];
  return static_cast<double>(spare) / static_cast<double>(std::max<std::int64_t>(row.need, 1));
}

void StockChoice::forbid(const Counts& stocks) {
  forbidden_.push_back(stocks);
  std::erase_if(open_, [&](const Choice& choice) { return noneMore(choice.stocks, stocks); });
}

void StockChoice::setAside(const Counts& stocks) {
  for (Choice& choice : open_) choice.aside = choice.aside || choice.stocks == stocks;
}

void StockChoice::takeBack() {
  for (Choice& choice : open_) choice.aside = false;
}

// Whether what is still needed cannot be had for less than the best so far.
bool StockChoice::tooDear(std::size_t at, std::int64_t cost) {
  const bool full = !found_.empty() && (anyWillDo_ || found_.size() == mostFound);
  const std::int64_t most = bestCost_ - (full ? 1 : 0);
  if (cost > most) return true;
  steps_ += static_cast<std::int64_t>(rows_.size());
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

// Looked at before: what costs no more than the frontier, and what is open beyond it.
bool StockChoice::isKnown(std::int64_t cost) const {
  if (!anyWillDo_ && cost <= frontier_) return true;
  return std::any_of(forbidden_.begin(), forbidden_.end(),
                     [&](const Counts& counts) { return noneMore(taken_, counts); }) ||
         (!anyWillDo_ && std::any_of(open_.begin(), open_.end(), [&](const Choice& choice) {
           return choice.cost > frontier_ && choice.stocks == taken_;
         }));
}

void StockChoice::offer(std::int64_t cost) {
  if (tooDear(order_.size(), cost) || isKnown(cost)) return;
  if (cost < bestCost_) found_.clear();
  bestCost_ = cost;
  found_.push_back(taken_);
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
  const std::int64_t each = problem_.stocks[stock].cost;
  while (taken_[stock] < supply && isKnown(cost + taken_[stock] * each)) take(stock, 1);
  offer(cost + taken_[stock] * each);
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
  if (tooDear(at, cost)) return;
  const std::size_t stock = order_[at];
  if (at + 1 == order_.size()) return chooseLast(stock, cost);
  const Range range = rangeOf(at, cost);
  if (range.fewest > range.most) return;
  take(stock, range.fewest);
  while (taken_[stock] <= range.most) {
    const std::int64_t costThen = cost + taken_[stock] * problem_.stocks[stock].cost;
    choose(at + 1, costThen);
    if (holdsEnough() && !isKnown(costThen)) break;
    take(stock, 1);
  }
  take(stock, -taken_[stock]);
}

// Finds the choices that cost the least, and no more than that.
void StockChoice::searchUpTo(std::int64_t cost) {
  found_.clear();
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

// Opens the choices of the next higher cost. False: there are none below that.
bool StockChoice::openNext(std::int64_t below, CuttingWork& work) {
  // They cost little more than the last ones, so that is where they are looked for first.
  found_.clear();
  for (std::int64_t step = 1; found_.empty() && frontier_ + 1 < below && !work.ended(); step = 2 * step + commonCost_) {
    const std::int64_t upTo = frontier_ + std::min(below - 1 - frontier_, step);
    searchUpTo(upTo);
    work.spend(20 * steps_);
    if (found_.empty()) frontier_ = upTo;
  }
  for (Counts& stocks : found_) {
    double room = INFINITY;
    for (const Row& row : rows_) room = std::min(room, roomIn(row, stocks));
    open_.push_back({std::move(stocks), bestCost_, room, false});
  }
  if (!found_.empty()) frontier_ = bestCost_ - (found_.size() == mostFound ? 1 : 0);
  return !found_.empty();
}

const StockChoice::Choice* StockChoice::cheapestOpen(std::int64_t below, bool asideToo) const {
  const Choice* best = nullptr;
  for (const Choice& choice : open_) {
    if (choice.cost >= below || (choice.aside && !asideToo)) continue;
    const bool better = !best || choice.cost < best->cost || (choice.cost == best->cost && choice.room > best->room);
    if (better) best = &choice;
  }
  return best;
}

std::optional<Counts> StockChoice::cheapest(std::int64_t below, CuttingWork& work) {
  const Choice* open = cheapestOpen(below, false);
  if (!open && openNext(below, work)) open = cheapestOpen(below, false);
  if (!open) return std::nullopt;
  return open->stocks;
}

std::optional<Counts> StockChoice::cheapestOfAll(std::int64_t below, CuttingWork& work) {
  if (const Choice* open = cheapestOpen(below, true)) return open->stocks;
  return cheapest(below, work);
}

std::optional<Counts> StockChoice::anyBelow(std::int64_t below, CuttingWork& work) {
  if (below <= 0) return std::nullopt;
  anyWillDo_ = true;
  searchUpTo(below - 1);
  anyWillDo_ = false;
  work.spend(20 * steps_);
  if (found_.empty()) return std::nullopt;
  return found_.back();
}

}  // namespace ribwright
