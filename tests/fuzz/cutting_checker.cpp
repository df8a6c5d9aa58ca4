#include "tests/fuzz/cutting_checker.h"

#include <algorithm>
#include <functional>
#include <map>
#include <numeric>
#include <set>

#include "core/units/length.h"

namespace ribwright::fuzz {
namespace {

using Numbers = std::vector<std::int64_t>;

std::string shown(const Numbers& numbers) {
  std::string text;
  for (const std::int64_t number : numbers) text += (text.empty() ? "" : " ") + std::to_string(number);
  return text;
}

// Length and how many are wanted, equal lengths together.
std::map<std::int64_t, std::int64_t> wanted(const CuttingList& list) {
  std::map<std::int64_t, std::int64_t> counts;
  for (const CutDemand& demand : list.demands)
    if (demand.count > 0) counts[demand.length] += demand.count;
  return counts;
}

std::int64_t piecesWanted(const CuttingList& list) {
  std::int64_t pieces = 0;
  for (const CutDemand& demand : list.demands) pieces += demand.count;
  return pieces;
}

void checkPattern(const CuttingList& list, const CutPattern& pattern, Complaints& complaints) {
  const bool sound = pattern.stock >= 0 && static_cast<std::size_t>(pattern.stock) < list.stocks.size() &&
                     pattern.times > 0 && pattern.counts.size() == list.demands.size();
  if (!complaints.check(sound, "is no pattern of this list")) return;
  std::int64_t length = 0, pieces = 0;
  for (std::size_t i = 0; i < pattern.counts.size(); ++i) {
    complaints.check(pattern.counts[i] >= 0, "cuts less than none");
    length += pattern.counts[i] * list.demands[i].length;
    pieces += pattern.counts[i];
  }
  complaints.check(pieces > 0, "cuts nothing");
  const std::int64_t room = list.stocks[static_cast<std::size_t>(pattern.stock)].length - list.endTrim;
  complaints.check(length + std::max<std::int64_t>(0, pieces - 1) * list.kerf <= room, "is longer than its stock");
}

void checkPatterns(const CuttingList& list, const CuttingPlan& plan, Complaints& complaints) {
  Numbers cut(list.demands.size(), 0), used(list.stocks.size(), 0);
  std::set<std::pair<int, Numbers>> seen;
  for (std::size_t p = 0; p < plan.patterns.size(); ++p) {
    const CutPattern& pattern = plan.patterns[p];
    complaints.at("pattern " + std::to_string(p));
    const std::size_t before = complaints.lines().size();
    checkPattern(list, pattern, complaints);
    if (complaints.lines().size() > before) continue;
    complaints.check(seen.insert({pattern.stock, pattern.counts}).second, "is there twice");
    used[static_cast<std::size_t>(pattern.stock)] += pattern.times;
    for (std::size_t i = 0; i < cut.size(); ++i) cut[i] += pattern.times * pattern.counts[i];
  }
  std::int64_t total = 0;
  for (std::size_t k = 0; k < used.size(); ++k) {
    total += used[k] * statedCost(list, k);
    complaints.at("stock " + std::to_string(k));
    if (list.stocks[k].supply) complaints.check(used[k] <= *list.stocks[k].supply, "has a smaller supply");
  }
  for (std::size_t i = 0; i < cut.size(); ++i) {
    complaints.at("demand " + std::to_string(i));
    complaints.check(cut[i] == list.demands[i].count, "is cut " + std::to_string(cut[i]) + " times");
  }
  complaints.at("total");
  complaints.check(total == plan.total, "is " + std::to_string(total) + ", not " + std::to_string(plan.total));
  complaints.check(plan.bound <= plan.total, "is less than the bound");
}

// The most points that a stock of this length holds, by what every length that can be cut off it holds at most.
std::int64_t mostPoints(const CuttingList& list, const std::map<std::int64_t, std::int64_t>& points,
                        std::int64_t stock) {
  const std::int64_t room = stock - list.endTrim + list.kerf;
  std::map<std::int64_t, std::int64_t> best = {{0, 0}};  // used up -> points
  for (const auto& [length, count] : wanted(list)) {
    const std::int64_t each = length + list.kerf, worth = points.at(length);
    if (worth == 0) continue;
    for (std::int64_t n = 0; n < count; ++n) {
      std::map<std::int64_t, std::int64_t> more = best;
      for (const auto& [used, value] : best)
        if (used + each <= room) more[used + each] = std::max(more[used + each], value + worth);
      if (more == best) break;
      // Who uses more for no more points is of no use.
      std::int64_t highest = -1;
      std::erase_if(more, [&](const auto& entry) {
        if (entry.second <= highest) return true;
        highest = entry.second;
        return false;
      });
      best = std::move(more);
    }
  }
  return room < 0 ? 0 : best.rbegin()->second;
}

// True when the list's points can be trusted.
bool checkPrices(const CuttingList& list, const PriceList& prices, Complaints& complaints) {
  const bool sound = prices.points.size() == list.demands.size() && prices.mostPerStock.size() == list.stocks.size();
  if (!complaints.check(sound, "is no price list of this list")) return false;
  const std::size_t before = complaints.lines().size();
  std::map<std::int64_t, std::int64_t> points;
  for (std::size_t i = 0; i < prices.points.size(); ++i) {
    if (list.demands[i].count == 0) continue;
    complaints.check(prices.points[i] >= 0, "counts less than nothing");
    const auto known = points.emplace(list.demands[i].length, prices.points[i]);
    complaints.check(known.first->second == prices.points[i], "gives equal lengths different points");
  }
  if (complaints.lines().size() > before) return false;
  for (std::size_t k = 0; k < list.stocks.size(); ++k) {
    const std::int64_t most = mostPoints(list, points, list.stocks[k].length);
    complaints.check(most == prices.mostPerStock[k], "stock " + std::to_string(k) + " holds " + std::to_string(most) +
                                                         ", not " + std::to_string(prices.mostPerStock[k]));
  }
  return complaints.lines().size() == before;
}

// Goes through the choices of stocks that cost less than the bound, of which no greater one does.
class CheaperChoices {
 public:
  CheaperChoices(const CuttingList& list, const CuttingPlan& plan) : list_(list), plan_(plan) {
    for (const PriceList& prices : plan.proof) {
      Int128 worth = 0;
      for (std::size_t i = 0; i < prices.points.size(); ++i) worth += Int128(prices.points[i]) * list.demands[i].count;
      lacking_.push_back(worth);
    }
    taken_.assign(list.stocks.size(), 0);
    go(0, plan.bound - 1);
  }

  const std::vector<Numbers>& unrefuted() const { return unrefuted_; }

 private:
  // Nobody takes more stock than there are pieces, but only of what costs nothing is that needed.
  std::int64_t mostOf(std::size_t stock, std::int64_t money) const {
    const std::int64_t cost = statedCost(list_, stock);
    const std::int64_t supply = list_.stocks[stock].supply.value_or(INT64_MAX);
    return std::min(supply, cost == 0 ? piecesWanted(list_) : money / cost);
  }

  void take(std::size_t stock, std::int64_t count) {
    taken_[stock] += count;
    for (std::size_t l = 0; l < lacking_.size(); ++l) lacking_[l] -= Int128(plan_.proof[l].mostPerStock[stock]) * count;
  }

  void go(std::size_t stock, std::int64_t money) {
    if (money < 0 || unrefuted_.size() > 100) return;
    if (stock == list_.stocks.size()) {
      const bool refuted = std::any_of(lacking_.begin(), lacking_.end(), [](Int128 lacking) { return lacking > 0; });
      if (!refuted) unrefuted_.push_back(taken_);
      return;
    }
    const std::int64_t most = mostOf(stock, money), cost = statedCost(list_, stock);
    const bool all = cost == 0 || stock + 1 == list_.stocks.size();
    take(stock, all ? most : 0);
    for (;;) {
      go(stock + 1, money - taken_[stock] * cost);
      if (taken_[stock] >= most) break;
      take(stock, 1);
    }
    take(stock, -taken_[stock]);
  }

  const CuttingList& list_;
  const CuttingPlan& plan_;
  std::vector<Int128> lacking_;
  Numbers taken_;
  std::vector<Numbers> unrefuted_;
};

}  // namespace

std::int64_t statedCost(const CuttingList& list, std::size_t stock) {
  if (list.stocks[stock].cost) return *list.stocks[stock].cost;
  return list.stocks.size() == 1 ? 1 : list.stocks[stock].length;
}

std::optional<std::int64_t> leastByTrying(const CuttingList& list) {
  const auto counts = wanted(list);
  Numbers lengths, left, supply;
  for (auto entry = counts.rbegin(); entry != counts.rend(); ++entry) {
    lengths.push_back(entry->first);
    left.push_back(entry->second);
  }
  for (const Stock& stock : list.stocks) supply.push_back(stock.supply.value_or(INT32_MAX));
  std::map<Numbers, std::optional<std::int64_t>> known;
  std::function<std::optional<std::int64_t>()> least;
  // Puts more pieces, from length i on, into the stock that is being filled.
  std::function<void(std::size_t, std::int64_t, std::int64_t, std::optional<std::int64_t>&)> fill =
      [&](std::size_t i, std::int64_t room, std::int64_t cost, std::optional<std::int64_t>& best) {
        if (const auto rest = least(); rest && (!best || *rest + cost < *best)) best = *rest + cost;
        for (; i < lengths.size(); ++i) {
          if (left[i] == 0 || lengths[i] + list.kerf > room) continue;
          --left[i];
          fill(i, room - lengths[i] - list.kerf, cost, best);
          ++left[i];
        }
      };
  least = [&]() -> std::optional<std::int64_t> {
    const auto longest = std::find_if(left.begin(), left.end(), [](std::int64_t count) { return count > 0; });
    if (longest == left.end()) return 0;
    Numbers key = left;
    key.insert(key.end(), supply.begin(), supply.end());
    if (const auto found = known.find(key); found != known.end()) return found->second;
    std::optional<std::int64_t> best;
    const std::size_t first = static_cast<std::size_t>(longest - left.begin());
    for (std::size_t k = 0; k < supply.size(); ++k) {
      const std::int64_t room = list.stocks[k].length - list.endTrim + list.kerf - lengths[first] - list.kerf;
      if (supply[k] == 0 || room < 0) continue;
      --supply[k];
      --left[first];
      fill(first, room, statedCost(list, k), best);
      ++left[first];
      ++supply[k];
    }
    known[key] = best;
    return best;
  };
  return least();
}

Complaints checkCutting(const CuttingList& list, const CuttingPlan& plan) {
  Complaints complaints;
  checkPatterns(list, plan, complaints);
  for (std::size_t l = 0; l < plan.proof.size(); ++l) {
    complaints.at("price list " + std::to_string(l));
    if (!checkPrices(list, plan.proof[l], complaints)) return complaints;
  }
  complaints.at("bound");
  const CheaperChoices cheaper(list, plan);
  if (!plan.provedBySearch) {
    for (const Numbers& stocks : cheaper.unrefuted()) complaints.add("nothing refutes the stocks " + shown(stocks));
    return complaints;
  }
  for (const Numbers& stocks : cheaper.unrefuted()) {
    CuttingList only = list;
    for (std::size_t k = 0; k < stocks.size(); ++k)
      only.stocks[k] = {list.stocks[k].length, statedCost(list, k), stocks[k]};
    complaints.check(!leastByTrying(only), "the stocks " + shown(stocks) + " do serve");
  }
  return complaints;
}

}  // namespace ribwright::fuzz
