#include "core/takeoff/served_needs.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <utility>

namespace ribwright {

std::vector<std::optional<std::size_t>> servedNeeds(const std::vector<Length>& needs,
                                                    const std::vector<Length>& sheets) {
  std::set<std::pair<Length, std::size_t>> left;
  for (std::size_t sheet = 0; sheet < sheets.size(); ++sheet) left.emplace(sheets[sheet], sheet);
  std::vector<std::size_t> order(needs.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return needs[a] > needs[b]; });
  std::vector<std::optional<std::size_t>> served(needs.size());
  for (const std::size_t need : order) {
    const auto at = left.lower_bound({needs[need], 0});
    if (at == left.end()) continue;
    served[need] = at->second;
    left.erase(at);
  }
  return served;
}

}  // namespace ribwright
