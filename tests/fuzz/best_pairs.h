// The best pairing by looking at all of them: of at most 20 things.
#pragma once

#include <cstdint>
#include <tuple>
#include <utility>
#include <vector>

#include "core/cutting/lowest_pairs.h"

namespace ribwright::fuzz {

// Best over all sets of things, from the last thing to the first: what is saved, how many pairs, and then the set of
// pairs that comes first in a dictionary.
class BestPairs {
 public:
  BestPairs(int count, const std::vector<PairSaving>& savings)
      : count_(count), saved_(std::size_t(count * count)), best_(std::size_t(1) << count, {-1, 0}) {
    for (const PairSaving& s : savings) saved_[std::size_t(s.a * count + s.b)] = s.saved;
  }

  std::vector<std::pair<int, int>> pairs() {
    std::vector<std::pair<int, int>> chosen;
    unsigned left = (1U << count_) - 1;
    for (int a = 0; a < count_; ++a) {
      if (!(left >> a & 1U)) continue;
      const auto target = of(left);
      left &= ~(1U << a);
      for (int b = a + 1; b < count_; ++b) {
        const std::int64_t saved = saved_[std::size_t(a * count_ + b)];
        if (saved == 0 || !(left >> b & 1U)) continue;
        const auto rest = of(left & ~(1U << b));
        if (std::pair(rest.first + saved, rest.second + 1) != target) continue;
        chosen.emplace_back(a, b);
        left &= ~(1U << b);
        break;
      }
    }
    return chosen;
  }

 private:
  std::pair<std::int64_t, int> of(unsigned left) {
    auto& known = best_[left];
    if (known.first >= 0) return known;
    std::pair<std::int64_t, int> best{0, 0};
    int a = 0;
    while (a < count_ && !(left >> a & 1U)) ++a;
    if (a < count_) {
      const unsigned others = left & ~(1U << a);
      best = of(others);
      for (int b = a + 1; b < count_; ++b) {
        const std::int64_t saved = saved_[std::size_t(a * count_ + b)];
        if (saved == 0 || !(others >> b & 1U)) continue;
        const auto rest = of(others & ~(1U << b));
        best = std::max(best, std::pair(rest.first + saved, rest.second + 1));
      }
    }
    return best_[left] = best;
  }

  int count_;
  std::vector<std::int64_t> saved_;
  std::vector<std::pair<std::int64_t, int>> best_;
};

}  // namespace ribwright::fuzz
