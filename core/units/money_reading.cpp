// Money from what a person typed.
#include <algorithm>

#include "core/units/typed_text.h"

#include "core/units/money.h"

namespace ribwright {
namespace {

constexpr std::string_view blank = " ", noBreak = "\u00a0", narrowNoBreak = "\u202f", minusSign = "\u2212";

std::string_view withoutSpaces(std::string_view text) {
  for (bool more = true; more;) {
    more = false;
    for (const std::string_view space : {blank, noBreak, narrowNoBreak, std::string_view("\t")}) {
      if (text.starts_with(space)) text.remove_prefix(space.size()), more = true;
      if (text.ends_with(space)) text.remove_suffix(space.size()), more = true;
    }
  }
  return text;
}

class Reading {
 public:
  Reading(std::string_view text, char decimalSign) : whole_(text), left_(withoutSpaces(text)), sign_(decimalSign) {}

  Outcome<Money> read() {
    const bool negative = take("-") || take(minusSign);
    if (!negative) take("+");
    if (left_.empty() || !isDigit(left_.front())) return wrong("is no sum of money; write the figure alone, as ");
    firstDigits_ = digits();
    while (const auto space = separator()) {
      if (!group(*space)) return fault_;
    }
    if (!left_.empty() && left_.front() == sign_) {
      if (!decimals()) return fault_;
    } else if (groupedBy_ == otherSign()) {
      return wrong("can be read in two ways; write it without groups or with its cents, as ");
    } else {
      cents_ *= 100;
    }
    if (!left_.empty()) return wrong("is no sum of money; write the figure alone, as ");
    if (cents_ > mostCents) return wrong("is more than can be reckoned with; a sum looks like ");
    return Money::cents(static_cast<std::int64_t>(negative ? -cents_ : cents_));
  }

 private:
  std::string_view otherSign() const { return sign_ == '.' ? "," : "."; }

  bool take(std::string_view what) {
    if (!left_.starts_with(what)) return false;
    left_.remove_prefix(what.size());
    return true;
  }

  Fault wrong(std::string_view why) {
    const bool point = sign_ == '.';
    std::string message = std::string("\"").append(whole_).append("\" ").append(why);
    fault_ = {"", message.append(point ? "1234.50 or 1,234.50" : "1234,50 or 1.234,50")};
    return fault_;
  }
  bool refuse(std::string_view why) { return wrong(why), false; }

  // Up to the next sign; how many.
  std::size_t digits() {
    std::size_t count = 0;
    for (; count < left_.size() && isDigit(left_[count]); ++count) {
      if (cents_ <= mostCents) cents_ = cents_ * 10 + (left_[count] - '0');
    }
    left_.remove_prefix(count);
    return count;
  }

  std::optional<std::string_view> separator() const {
    for (const std::string_view space : {otherSign(), blank, noBreak, narrowNoBreak}) {
      if (left_.starts_with(space)) return space;
    }
    return std::nullopt;
  }

  bool group(std::string_view by) {
    const auto digit = [&](std::size_t i) { return i < left_.size() && isDigit(left_[i]); };
    const std::size_t at = by.size();
    if (!digit(at)) return refuse("is no sum of money; write the figure alone, as ");
    const bool three = digit(at) && digit(at + 1) && digit(at + 2) && !digit(at + 3);
    const bool fits = firstDigits_ <= 3 && (groupedBy_.empty() || groupedBy_ == by);
    if (!three || !fits) return refuse("is no sum of money here: groups are of three digits; write it as ");
    take(by);
    groupedBy_ = by;
    digits();
    return true;
  }

  bool decimals() {
    left_.remove_prefix(1);
    const std::size_t count = digits();
    if (count == 0) return refuse("ends in a decimal sign; write it as ");
    if (count > 2) return refuse("is finer than a cent; write it as ");
    cents_ *= count == 1 ? 10 : 1;
    return true;
  }

  std::string_view whole_, left_;
  char sign_;
  Int128 cents_ = 0;  // first whole units, then hundredths
  std::size_t firstDigits_ = 0;
  std::string_view groupedBy_;
  Fault fault_;
};

}  // namespace

Outcome<Money> parseMoney(std::string_view text, char decimalSign) { return Reading(text, decimalSign).read(); }

}  // namespace ribwright
