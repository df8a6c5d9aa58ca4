// Exact money, and its text.
//
// Unit: whole hundredths of a currency ("cents") in a signed 64-bit integer. Sums and differences are checked; leaving
// the range throws std::overflow_error. A quantity times a price is exact and rounded once, half to even, to the cent
// (ASTM E29 section 6); never a double, never a locale.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/exact_ratio.h"
#include "core/units/outcome.h"

namespace ribwright {

class Money {
 public:
  constexpr Money() = default;
  static constexpr Money cents(std::int64_t count) { return Money(count); }
  constexpr std::int64_t cents() const { return cents_; }

  constexpr auto operator<=>(const Money&) const = default;
  friend constexpr Money operator+(Money a, Money b) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a.cents_, b.cents_, &sum)) overflow();
    return Money(sum);
  }
  friend constexpr Money operator-(Money a, Money b) {
    std::int64_t difference = 0;
    if (__builtin_sub_overflow(a.cents_, b.cents_, &difference)) overflow();
    return Money(difference);
  }
  constexpr Money operator-() const { return Money() - *this; }
  constexpr Money& operator+=(Money other) { return *this = *this + other; }
  constexpr Money& operator-=(Money other) { return *this = *this - other; }

 private:
  explicit constexpr Money(std::int64_t cents) : cents_(cents) {}
  [[noreturn]] static void overflow();
  std::int64_t cents_ = 0;
};

// Ten million millions of the currency, in cents: no single amount is more, so that thousands of them add up.
inline constexpr std::int64_t mostCents = 1'000'000'000'000'000;

// `quantity` of something times what one of it costs, rounded once. Nothing when that is beyond mostCents either way,
// or when 128 bits do not hold the product.
std::optional<Money> amount(const ExactRatio& quantity, Money each);

// `whole` divided in proportion to `shares`, in whole cents that add up to `whole` exactly: each part gets its share
// rounded towards nothing, and the cents that are left go to the largest remainders one by one, of equal ones to the
// first. Of shares that are all 0 the first takes all. Throws std::invalid_argument for no shares at all or a negative
// one, std::overflow_error when 128 bits do not hold whole x a share.
std::vector<Money> apportioned(Money whole, const std::vector<Int128>& shares);

// "1234.50", "-0.05": for tables and files, always two decimals and no grouping. `decimalSign` '.' or ','.
std::string moneyText(Money money, char decimalSign = '.');
// For people: "1,234.50 USD", with a decimal comma "1.234,50 EUR". A currency of one sign stands in front of a figure
// with a point ("$1,234.50"), any other behind it; empty: the figure alone. U+2212 is the minus.
std::string shownMoney(Money money, char decimalSign, std::string_view currency);
// The same with its sign in front even when it is more: "+$18.20".
std::string shownDifference(Money more, char decimalSign, std::string_view currency);

// The figure alone, in the currency's whole units: "1234.50", "1234.5", "1234", and grouped by threes with cents
// behind, "1,234.50" ("1.234,50" and "1 234,50" with a decimal comma). Refused with a reason, never guessed: "1,234",
// which may mean one and a bit; the other decimal sign; groups that are not of three; anything finer than a cent; a
// currency; more than mostCents. Fault: an empty place, its message quoting the text.
Outcome<Money> parseMoney(std::string_view text, char decimalSign);

}  // namespace ribwright
