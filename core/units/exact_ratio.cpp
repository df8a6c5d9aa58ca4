#include "core/units/exact_ratio.h"

namespace ribwright {

namespace {

// Numbers stay below this size, so that a sign can always be turned and a half-even rounding can double what is left.
constexpr Int128 kLimit = Int128(1) << 125;

Int128 commonDivisor(Int128 a, Int128 b) {
  if (a < 0) a = -a;
  while (b != 0) {
    const Int128 left = a % b;
    a = b;
    b = left;
  }
  return a;
}

bool fits(Int128 number) { return number < kLimit && number > -kLimit; }

std::optional<Int128> times(Int128 a, Int128 b) {
  Int128 result = 0;
  if (__builtin_mul_overflow(a, b, &result) || !fits(result)) return std::nullopt;
  return result;
}

}  // namespace

std::optional<ExactRatio> ratio(Int128 above, Int128 below) {
  if (below == 0 || !fits(above) || !fits(below)) return std::nullopt;
  if (below < 0) {
    above = -above;
    below = -below;
  }
  const Int128 common = commonDivisor(above, below);
  return ExactRatio{above / common, below / common};
}

std::optional<ExactRatio> sum(const ExactRatio& a, const ExactRatio& b) {
  const Int128 common = commonDivisor(a.below, b.below);
  const auto left = times(a.above, b.below / common);
  const auto right = times(b.above, a.below / common);
  const auto below = times(a.below, b.below / common);
  if (!left || !right || !below) return std::nullopt;
  return ratio(*left + *right, *below);
}

std::optional<ExactRatio> product(const ExactRatio& a, const ExactRatio& b) {
  // Reduced crosswise first, so that nothing overflows that need not.
  const auto first = ratio(a.above, b.below);
  const auto second = ratio(b.above, a.below);
  if (!first || !second) return std::nullopt;
  const auto above = times(first->above, second->above);
  const auto below = times(first->below, second->below);
  if (!above || !below) return std::nullopt;
  return ExactRatio{*above, *below};
}

std::optional<ExactRatio> quotient(const ExactRatio& a, const ExactRatio& b) {
  const auto turned = ratio(b.below, b.above);
  return turned ? product(a, *turned) : std::nullopt;
}

ExactRatio negative(const ExactRatio& a) { return ExactRatio{-a.above, a.below}; }

}  // namespace ribwright
