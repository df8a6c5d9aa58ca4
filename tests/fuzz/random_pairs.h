// Random things to be paired, of the sorts that buildings bring about and of those that are hard to pair.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "core/cutting/lowest_pairs.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

inline std::vector<PairSaving> randomSavings(Dice& dice, int count) {
  const int sort = dice.small(0, 4), clique = 3 + 2 * dice.small(0, 2), thin = dice.small(1, 4);
  const std::int64_t values = dice.of({1, 2, 3, 10, 1'000'000'000});
  const std::int64_t unit = dice.of({1, 25'400'000, 396'875});
  std::vector<PairSaving> savings;
  for (int a = 0; a < count; ++a) {
    for (int b = a + 1; b < count; ++b) {
      bool linked = dice.oneIn(thin);
      std::int64_t saved = dice.between(1, values);
      if (sort == 1) linked = linked && a % 2 != b % 2;
      if (sort == 2) {  // rounds of an odd number, worth much within and little between
        const bool within = a / clique == b / clique;
        linked = within || dice.oneIn(3);
        saved = within ? 10 + dice.between(0, values % 3) : dice.between(1, 4);
      }
      if (sort == 3) saved = 40 + (a * 7 + b * 5) % 3;  // as lengths in whole inches are: much alike
      if (linked) savings.push_back({a, b, saved * unit});
    }
  }
  return savings;
}

}  // namespace ribwright::fuzz
