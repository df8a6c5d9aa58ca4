#include "core/cutting/pattern_pool.h"

#include <algorithm>

namespace ribwright {

void fillUp(const CutProblem& problem, const Counts& demand, std::size_t stock, Counts& counts) {
  std::int64_t room = problem.stocks[stock].capacity;
  for (std::size_t i = 0; i < counts.size(); ++i) room -= counts[i] * problem.sizes[i];
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const std::int64_t more = std::min(demand[i] - counts[i], room / problem.sizes[i]);
    if (more <= 0) continue;
    counts[i] += more;
    room -= more * problem.sizes[i];
  }
}

}  // namespace ribwright
