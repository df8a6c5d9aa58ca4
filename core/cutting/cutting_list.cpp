#include "core/cutting/cutting_list.h"

#include <algorithm>
#include <string>

namespace ribwright {
namespace {

constexpr std::int64_t mostLength = 1'000'000'000'000'000;
constexpr std::int64_t mostSum = 1'000'000'000'000'000'000;
constexpr std::int64_t mostPieces = 10'000'000;
constexpr std::size_t mostLines = 2'000, mostStocks = 200;

std::string place(const char* list, std::size_t index, const char* member) {
  return std::string(list).append("[").append(std::to_string(index)).append("].").append(member);
}

void needsWithin(std::vector<Fault>& faults, std::string where, std::int64_t value, std::int64_t least,
                 std::int64_t most) {
  if (value >= least && value <= most) return;
  faults.push_back({std::move(where), std::to_string(value) + " is out of range; it is " + std::to_string(least) +
                                          " to " + std::to_string(most)});
}

void lookAtStocks(std::vector<Fault>& faults, const CuttingList& list) {
  for (std::size_t k = 0; k < list.stocks.size(); ++k) {
    const Stock& stock = list.stocks[k];
    needsWithin(faults, place("stocks", k, "length"), stock.length, 1, mostLength);
    if (stock.cost) needsWithin(faults, place("stocks", k, "cost"), *stock.cost, 0, mostLength);
    if (stock.supply) needsWithin(faults, place("stocks", k, "supply"), *stock.supply, 0, INT64_MAX);
  }
}

void lookAtDemands(std::vector<Fault>& faults, const CuttingList& list) {
  for (std::size_t i = 0; i < list.demands.size(); ++i) {
    needsWithin(faults, place("demands", i, "length"), list.demands[i].length, 1, mostLength);
    needsWithin(faults, place("demands", i, "count"), list.demands[i].count, 0, mostPieces);
  }
}

void lookAtSizes(std::vector<Fault>& faults, const CuttingList& list) {
  if (list.stocks.empty()) faults.push_back({"stocks", "no stock is stated; state at least one length"});
  if (list.demands.empty()) faults.push_back({"demands", "no length is wanted; state at least one"});
  if (list.stocks.size() > mostStocks)
    faults.push_back({"stocks", "are more than " + std::to_string(mostStocks) + "; leave out those that are not used"});
  if (list.demands.size() > mostLines)
    faults.push_back({"demands", "are more than " + std::to_string(mostLines) + " lines; cut them in several lists"});
}

// Needs lengths, counts and costs within range.
void lookAtSums(std::vector<Fault>& faults, const CuttingList& list) {
  std::int64_t pieces = 0;
  for (const CutDemand& demand : list.demands) pieces += demand.count;
  if (pieces > mostPieces) {
    faults.push_back({"demands", "are more than " + std::to_string(mostPieces) + " pieces; cut them in several lists"});
    return;
  }
  std::int64_t dearest = list.kerf;
  for (std::size_t k = 0; k < list.stocks.size(); ++k)
    dearest = std::max({dearest, list.stocks[k].length, costOf(list, k)});
  if (pieces > 0 && dearest > mostSum / pieces)
    faults.push_back(
        {"demands", "lengths or costs times pieces are more than " + std::to_string(mostSum) + "; use a coarser unit"});
}

void lookAtFit(std::vector<Fault>& faults, const CuttingList& list) {
  std::int64_t longest = 0;
  for (const Stock& stock : list.stocks)
    if (stock.supply.value_or(1) > 0) longest = std::max(longest, stock.length);
  for (std::size_t i = 0; i < list.demands.size(); ++i) {
    if (list.demands[i].count == 0 || list.demands[i].length <= longest - list.endTrim) continue;
    faults.push_back(
        {place("demands", i, "length"), std::to_string(list.demands[i].length) + " is longer than any stock leaves (" +
                                            std::to_string(std::max<std::int64_t>(0, longest - list.endTrim)) +
                                            "); state a longer stock or make the piece of two"});
  }
}

}  // namespace

std::int64_t costOf(const CuttingList& list, std::size_t stock) {
  const Stock& of = list.stocks[stock];
  return of.cost.value_or(list.stocks.size() == 1 ? 1 : of.length);
}

std::vector<Fault> faultsOf(const CuttingList& list) {
  std::vector<Fault> faults;
  lookAtSizes(faults, list);
  lookAtStocks(faults, list);
  lookAtDemands(faults, list);
  needsWithin(faults, "kerf", list.kerf, 0, mostLength);
  needsWithin(faults, "endTrim", list.endTrim, 0, mostLength);
  if (!faults.empty()) return faults;
  lookAtSums(faults, list);
  if (faults.empty()) lookAtFit(faults, list);
  return faults;
}

}  // namespace ribwright
