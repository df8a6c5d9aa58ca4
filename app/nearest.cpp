#include "app/nearest.h"

#include <algorithm>

namespace ribwright {
namespace {

// Letters to add, drop, change or swap with a neighbour, each counted once (optimal string alignment).
std::size_t lettersApart(std::string_view a, std::string_view b) {
  std::vector<std::vector<std::size_t>> apart(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i) apart[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) apart[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t changed = apart[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      apart[i][j] = std::min({apart[i - 1][j] + 1, apart[i][j - 1] + 1, changed});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) apart[i][j] = std::min(apart[i][j], apart[i - 2][j - 2] + 1);
    }
  }
  return apart[a.size()][b.size()];
}

}  // namespace

std::optional<std::string> nearestWord(std::string_view word, const std::vector<std::string>& known) {
  std::optional<std::string> nearest;
  std::size_t fewest = std::max<std::size_t>(1, word.size() / 3) + 1;
  for (const auto& candidate : known) {
    const std::size_t apart = lettersApart(word, candidate);
    if (apart >= fewest) continue;
    fewest = apart;
    nearest = candidate;
  }
  return nearest;
}

}  // namespace ribwright
