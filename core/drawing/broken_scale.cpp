#include "core/drawing/broken_scale.h"

#include <numeric>

namespace ribwright {

std::vector<double> brokenSpaces(const std::vector<double>& spaces, const std::vector<double>& least, double width) {
  const std::size_t count = spaces.size();
  if (std::accumulate(least.begin(), least.end(), 0.0) > width) return {};
  std::vector<bool> held(count, false);
  std::vector<double> shown(count);
  // What comes out too narrow is held at its least; the others share what is left, until none is too narrow.
  for (bool changed = true; changed;) {
    changed = false;
    double left = width, sum = 0;
    std::size_t free = 0;
    for (std::size_t i = 0; i < count; ++i) {
      left -= held[i] ? least[i] : 0;
      sum += held[i] ? 0 : spaces[i];
      free += held[i] ? 0 : 1;
    }
    for (std::size_t i = 0; i < count; ++i) {
      if (held[i]) {
        shown[i] = least[i];
      } else {
        shown[i] = sum > 0 ? left * spaces[i] / sum : left / static_cast<double>(free);
      }
      if (held[i] || shown[i] >= least[i]) continue;
      held[i] = changed = true;
    }
  }
  return shown;
}

}  // namespace ribwright
