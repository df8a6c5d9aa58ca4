// Which of many things are paired so that most is saved, exactly and always alike.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace ribwright {

// What two things save when they are paired: a < b, saved > 0, each two at most once.
struct PairSaving {
  int a = 0, b = 0;
  std::int64_t saved = 0;
};

// The pairs (first < second, rising) that together save most; of those that save as much, the most pairs; of those, the
// set that is least by dictionary order when it is written as its rising list of pairs. So thing 0 has a partner when
// any of these sets gives it one, and then the lowest that any gives it; thing 1 likewise among the sets left; and so
// on. Exact: whole numbers alone. Things that no saving links are worked apart.
std::vector<std::pair<int, int>> lowestPairs(int count, const std::vector<PairSaving>& savings);

}  // namespace ribwright
