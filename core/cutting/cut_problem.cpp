#include "core/cutting/cut_problem.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <set>

namespace ribwright {
namespace {

std::int64_t piecesOf(const CuttingList& list) {
  std::int64_t pieces = 0;
  for (const CutDemand& demand : list.demands) pieces += demand.count;
  return pieces;
}

void mergeDemands(ReducedList& reduced, const CuttingList& list) {
  std::set<std::int64_t, std::greater<>> lengths;
  std::int64_t common = 0;
  for (const CutDemand& demand : list.demands) {
    if (demand.count == 0) continue;
    lengths.insert(demand.length + list.kerf);
    common = std::gcd(common, demand.length + list.kerf);
  }
  CutProblem& problem = reduced.problem;
  problem.sizes.assign(lengths.begin(), lengths.end());
  problem.demand.assign(lengths.size(), 0);
  for (const CutDemand& demand : list.demands) {
    const auto place =
        std::lower_bound(problem.sizes.begin(), problem.sizes.end(), demand.length + list.kerf, std::greater<>());
    reduced.sizeOf.push_back(demand.count == 0 ? -1 : static_cast<int>(place - problem.sizes.begin()));
    if (demand.count > 0) problem.demand[static_cast<std::size_t>(reduced.sizeOf.back())] += demand.count;
  }
  // Sums of sizes are multiples of what they have in common, so what a stock has beyond one is of no use.
  for (std::int64_t& size : problem.sizes) size /= common;
  for (const Stock& stock : list.stocks) {
    const std::int64_t capacity = stock.length - list.endTrim + list.kerf;
    reduced.allCapacities.push_back(capacity <= 0 || common == 0 ? 0 : capacity / common);
  }
}

// Whether nobody would take the stock, as there is another at least as long that costs no more and never runs out.
bool isBeaten(const std::vector<CutStock>& stocks, std::size_t stock) {
  for (std::size_t other = 0; other < stocks.size(); ++other) {
    const CutStock &a = stocks[other], &b = stocks[stock];
    if (other == stock || a.supply < endlessSupply || a.cost == 0 || a.capacity < b.capacity || a.cost > b.cost)
      continue;
    const bool equal = a.capacity == b.capacity && a.cost == b.cost && b.supply == endlessSupply;
    if (!equal || other < stock) return true;
  }
  return false;
}

void chooseStocks(ReducedList& reduced, const CuttingList& list) {
  const std::int64_t pieces = piecesOf(list);
  std::vector<CutStock> all;
  for (std::size_t k = 0; k < list.stocks.size(); ++k) {
    const std::int64_t cost = costOf(list, k);
    const std::int64_t most = cost == 0 ? pieces : endlessSupply;
    all.push_back({reduced.allCapacities[k], cost, std::min(list.stocks[k].supply.value_or(most), most)});
  }
  for (std::size_t k = 0; k < all.size(); ++k) {
    const bool useless = reduced.problem.sizes.empty() || all[k].supply == 0 ||
                         all[k].capacity < reduced.problem.sizes.back() || isBeaten(all, k);
    if (useless) continue;
    reduced.problem.stocks.push_back(all[k]);
    reduced.stockOf.push_back(static_cast<int>(k));
  }
}

// The lines of the list that a cut's pieces go to, one stock piece of it, from what each line still lacks.
Counts lineCounts(const ReducedList& reduced, const Counts& lacking, Counts counts) {
  Counts lines(lacking.size(), 0);
  for (std::size_t i = 0; i < lacking.size(); ++i) {
    if (reduced.sizeOf[i] < 0) continue;
    std::int64_t& left = counts[static_cast<std::size_t>(reduced.sizeOf[i])];
    lines[i] = std::min(left, lacking[i]);
    left -= lines[i];
  }
  return lines;
}

std::int64_t repeats(const Counts& lines, const Counts& lacking, std::int64_t most) {
  for (std::size_t i = 0; i < lines.size(); ++i)
    if (lines[i] > 0) most = std::min(most, lacking[i] / lines[i]);
  return most;
}

void gather(std::vector<CutPattern>& patterns) {
  std::sort(patterns.begin(), patterns.end(), [](const CutPattern& a, const CutPattern& b) {
    return a.stock != b.stock ? a.stock < b.stock : a.counts > b.counts;
  });
  std::vector<CutPattern> gathered;
  for (CutPattern& pattern : patterns) {
    if (!gathered.empty() && gathered.back().stock == pattern.stock && gathered.back().counts == pattern.counts)
      gathered.back().times += pattern.times;
    else
      gathered.push_back(std::move(pattern));
  }
  patterns = std::move(gathered);
}

}  // namespace

ReducedList reduced(const CuttingList& list) {
  ReducedList reduced;
  mergeDemands(reduced, list);
  chooseStocks(reduced, list);
  return reduced;
}

std::int64_t costOf(const CutProblem& problem, const StockCuts& cuts) {
  std::int64_t cost = 0;
  for (const StockCut& cut : cuts) cost += problem.stocks[cut.stock].cost * cut.times;
  return cost;
}

std::vector<CutPattern> patternsOf(const CuttingList& list, const ReducedList& reduced, StockCuts cuts) {
  // Where cuts hold more than is wanted, it is left out of the cheapest stocks; one that is left empty is not needed.
  std::stable_sort(cuts.begin(), cuts.end(), [&](const StockCut& a, const StockCut& b) {
    return reduced.problem.stocks[a.stock].cost > reduced.problem.stocks[b.stock].cost;
  });
  Counts lacking;
  for (const CutDemand& demand : list.demands) lacking.push_back(demand.count);
  std::vector<CutPattern> patterns;
  for (const StockCut& cut : cuts) {
    for (std::int64_t left = cut.times; left > 0;) {
      Counts lines = lineCounts(reduced, lacking, cut.counts);
      if (std::all_of(lines.begin(), lines.end(), [](std::int64_t count) { return count == 0; })) break;
      const std::int64_t times = repeats(lines, lacking, left);
      for (std::size_t i = 0; i < lines.size(); ++i) lacking[i] -= lines[i] * times;
      patterns.push_back({reduced.stockOf[cut.stock], times, std::move(lines)});
      left -= times;
    }
  }
  gather(patterns);
  return patterns;
}

}  // namespace ribwright
