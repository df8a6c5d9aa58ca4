#include "core/cutting/gangs.h"

#include <algorithm>
#include <functional>
#include <map>

#include "core/cutting/stock_cutter.h"

namespace ribwright {
namespace {

// A dragged sheet must follow the hand.
constexpr std::int64_t kEffort = 2'000'000;

using Waiting = std::map<Length, std::vector<std::size_t>, std::greater<>>;  // indices, the lowest last

std::vector<std::size_t> taken(const CutPattern& pattern, Waiting& waiting) {
  std::vector<std::size_t> gang;
  std::size_t line = 0;
  for (auto& [length, indices] : waiting) {
    for (std::int64_t i = 0; i < pattern.counts[line]; ++i) {
      gang.push_back(indices.back());
      indices.pop_back();
    }
    ++line;
  }
  std::sort(gang.begin(), gang.end());
  return gang;
}

}  // namespace

std::vector<std::vector<std::size_t>> gangs(const std::vector<Length>& needed, Length sheet, Length kerf) {
  Waiting waiting;
  for (std::size_t i = needed.size(); i-- > 0;) {
    if (needed[i] <= sheet) waiting[needed[i]].push_back(i);
  }
  if (waiting.empty()) return {};
  CuttingList list;
  list.stocks.push_back({sheet.nanometres()});
  list.kerf = kerf.nanometres();
  for (const auto& [length, indices] : waiting)
    list.demands.push_back({length.nanometres(), static_cast<std::int64_t>(indices.size())});
  CuttingOptions options;
  options.effort = kEffort;
  const auto plan = cutStock(list, options);
  std::vector<std::vector<std::size_t>> all;
  if (!plan) return all;
  for (const CutPattern& pattern : plan.value().patterns) {
    for (std::int64_t time = 0; time < pattern.times; ++time) {
      auto gang = taken(pattern, waiting);
      if (gang.size() > 1) all.push_back(std::move(gang));
    }
  }
  return all;
}

}  // namespace ribwright
