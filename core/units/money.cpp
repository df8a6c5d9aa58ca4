#include "core/units/money.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace ribwright {
namespace {

// Characters of UTF-8, not bytes.
std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::uint64_t sizeOf(Money money) {
  const auto cents = static_cast<std::uint64_t>(money.cents());
  return money < Money() ? 0 - cents : cents;
}

std::string figure(std::uint64_t cents, char decimalSign, char group) {
  std::string whole = std::to_string(cents / 100);
  if (group != 0) {
    for (std::size_t at = whole.size(); at > 3;) whole.insert(at -= 3, 1, group);
  }
  const std::string rest = std::to_string(cents % 100 + 100);
  return whole.append(1, decimalSign).append(rest, 1, 2);
}

std::string shownSize(Money money, char decimalSign, std::string_view currency) {
  const std::string text = figure(sizeOf(money), decimalSign, decimalSign == '.' ? ',' : '.');
  if (currency.empty()) return text;
  if (characters(currency) == 1 && decimalSign == '.') return std::string(currency).append(text);
  return std::string(text).append("\u00a0").append(currency);
}

}  // namespace

void Money::overflow() { throw std::overflow_error("money out of range"); }

std::optional<Money> amount(const ExactRatio& quantity, Money each) {
  const auto exact = product(quantity, {each.cents(), 1});
  if (!exact) return std::nullopt;
  const Int128 rounded = roundHalfEven(exact->above, exact->below);
  if (rounded > mostCents || rounded < -Int128(mostCents)) return std::nullopt;
  return Money::cents(static_cast<std::int64_t>(rounded));
}

std::vector<Money> apportioned(Money whole, const std::vector<Int128>& shares) {
  if (shares.empty()) throw std::invalid_argument("money apportioned to nobody");
  std::vector<Money> parts(shares.size());
  Int128 all = 0;
  for (const Int128 share : shares) {
    if (share < 0) throw std::invalid_argument("money apportioned to less than nothing");
    all += share;
  }
  if (all == 0) {
    parts.front() = whole;
    return parts;
  }
  const bool negative = whole < Money();
  const Int128 size = negative ? -Int128(whole.cents()) : Int128(whole.cents());
  std::vector<Int128> rests;
  Int128 left = size;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    Int128 times = 0;
    if (__builtin_mul_overflow(size, shares[i], &times)) throw std::overflow_error("share of money out of range");
    rests.push_back(times % all);
    left -= times / all;
    parts[i] = Money::cents(static_cast<std::int64_t>(times / all));
  }
  std::vector<std::size_t> order(shares.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rests[a] > rests[b]; });
  for (std::size_t i = 0; left > 0; ++i, --left) parts[order[i]] += Money::cents(1);
  if (negative) std::transform(parts.begin(), parts.end(), parts.begin(), [](Money part) { return -part; });
  return parts;
}

std::string moneyText(Money money, char decimalSign) {
  return (money < Money() ? "-" : "") + figure(sizeOf(money), decimalSign, 0);
}

std::string shownMoney(Money money, char decimalSign, std::string_view currency) {
  return (money < Money() ? "\u2212" : "") + shownSize(money, decimalSign, currency);
}

std::string shownDifference(Money more, char decimalSign, std::string_view currency) {
  return (more > Money() ? "+" : "") + shownMoney(more, decimalSign, currency);
}

}  // namespace ribwright
