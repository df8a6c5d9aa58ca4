// Patterns that were worth while once.
#pragma once

#include <set>
#include <utility>

#include "core/cutting/cut_problem.h"

namespace ribwright {

class PatternPool {
 public:
  struct Pattern {
    std::size_t stock;
    Counts counts;
    auto operator<=>(const Pattern&) const = default;
  };

  // False: it is there already.
  bool add(std::size_t stock, const Counts& counts) {
    if (!known_.insert({stock, counts}).second) return false;
    patterns_.push_back({stock, counts});
    return true;
  }
  const std::vector<Pattern>& patterns() const { return patterns_; }

 private:
  std::vector<Pattern> patterns_;  // in the order they came
  std::set<Pattern> known_;
};

// Puts the longest sizes that still fit into what is left of the stock, no size oftener than `demand` has it.
void fillUp(const CutProblem& problem, const Counts& demand, std::size_t stock, Counts& counts);

}  // namespace ribwright
