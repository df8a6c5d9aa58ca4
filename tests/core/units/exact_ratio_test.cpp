#include "core/units/exact_ratio.h"

#include <catch2/catch.hpp>
#include <random>

namespace ribwright {
namespace {

bool isRatio(const std::optional<ExactRatio>& found, std::int64_t above, std::int64_t below) {
  return found && found->above == above && found->below == below;
}

TEST_CASE("a ratio stands in lowest terms with its sign above") {
  CHECK(isRatio(ratio(6, 4), 3, 2));
  CHECK(isRatio(ratio(6, -4), -3, 2));
  CHECK(isRatio(ratio(-6, -4), 3, 2));
  CHECK(isRatio(ratio(0, -4), 0, 1));
  CHECK_FALSE(ratio(1, 0));
}

TEST_CASE("ratios add, multiply and divide exactly") {
  const ExactRatio third = *ratio(1, 3);
  const ExactRatio sixth = *ratio(1, 6);
  CHECK(isRatio(sum(third, sixth), 1, 2));
  CHECK(isRatio(sum(third, negative(third)), 0, 1));
  CHECK(isRatio(product(third, sixth), 1, 18));
  CHECK(isRatio(quotient(third, sixth), 2, 1));
  CHECK_FALSE(quotient(third, ExactRatio{}));
  CHECK((third.isProper() && !third.isWhole() && !ExactRatio{3, 3}.isProper() && !negative(third).isProper()));
}

TEST_CASE("what 128 bits cannot hold gives nothing instead of a wrong number") {
  const Int128 large = Int128(1) << 124;
  CHECK(ratio(large, 1));
  CHECK_FALSE(ratio(large * 4, 1));
  CHECK_FALSE(sum({large, 1}, {large, 1}));
  CHECK_FALSE(product({large, 1}, {2, 1}));
  CHECK(product({large, 1}, {2, 4}));
  CHECK_FALSE(product({1, large}, {1, 3}));
  CHECK_FALSE(sum({1, large}, {1, 3}));
}

TEST_CASE("there and back: a + b - b and a * b / b are a") {
  std::mt19937_64 random(1);
  std::uniform_int_distribution<std::int64_t> pick(-1'000'000'000, 1'000'000'000);
  for (int i = 0; i < 20'000; ++i) {
    const auto a = ratio(pick(random), pick(random) | 1);
    const auto b = ratio(pick(random) | 1, pick(random) | 1);
    REQUIRE((a && b));
    const auto added = sum(*a, *b);
    const auto multiplied = product(*a, *b);
    REQUIRE((added && multiplied));
    const auto less = sum(*added, negative(*b));
    const auto divided = quotient(*multiplied, *b);
    REQUIRE((less && divided));
    CHECK((less->above == a->above && less->below == a->below));
    CHECK((divided->above == a->above && divided->below == a->below));
  }
}

}  // namespace
}  // namespace ribwright
