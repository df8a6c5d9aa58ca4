// An exact fraction of two whole numbers, for arithmetic typed by a person: (25'/3)*3 is 25 ft again.
//
// below > 0, always in lowest terms. Every operation gives nothing when 128 bits do not hold the result.
#pragma once

#include <optional>

#include "core/units/length.h"

namespace ribwright {

struct ExactRatio {
  Int128 above = 0;
  Int128 below = 1;

  bool isWhole() const { return below == 1; }
  bool isProper() const { return above >= 0 && above < below; }
};

// Nothing when below is 0.
std::optional<ExactRatio> ratio(Int128 above, Int128 below);
std::optional<ExactRatio> sum(const ExactRatio& a, const ExactRatio& b);
std::optional<ExactRatio> product(const ExactRatio& a, const ExactRatio& b);
// Nothing also when b is 0.
std::optional<ExactRatio> quotient(const ExactRatio& a, const ExactRatio& b);
ExactRatio negative(const ExactRatio& a);

}  // namespace ribwright
