// Example patterns that ship inside the program, with the screws that they name.
//
// They are examples: no plan stands behind them, and each says so until someone confirms its numbers.
#pragma once

#include <string_view>
#include <vector>

#include "core/job/screws.h"
#include "core/units/outcome.h"

namespace ribwright {

struct PatternExample {
  ScrewPattern pattern;
  std::vector<Screw> screws;
  bool operator==(const PatternExample&) const = default;
};

Outcome<PatternExample> readPattern(std::string_view text, std::string_view name);
// Those in resources/patterns, by file name. Each is marked as an example.
const std::vector<PatternExample>& shippedPatterns();

}  // namespace ribwright
