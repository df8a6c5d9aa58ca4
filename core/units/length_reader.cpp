// The reading half of length_text.h: sums, products and parentheses over the literals of length_literal.h.
//
//   sum     = [sign] product { (+ | -) product }      minus only inside parentheses
//   product = primary { (* | /) primary }
//   primary = ( sum ) | literal
#include "core/units/length_literal.h"
#include "core/units/length_spelling.h"
#include "core/units/length_text.h"
#include "core/units/typed_text.h"

namespace ribwright {

namespace {

constexpr std::size_t kLongestText = 400;
constexpr int kDeepest = 20;

class LengthReader {
 public:
  LengthReader(std::string_view text, const LengthStyle& style) : cursor_(text, style) {}

  std::optional<Length> read() {
    const auto whole = sumAt(0);
    if (!whole) return std::nullopt;
    if (!cursor_.atEnd()) {
      refuseRest();
      return std::nullopt;
    }
    const auto exact = inNanometres(cursor_, *whole);
    return exact ? rounded(*exact) : std::nullopt;
  }
  const std::string& reason() const { return cursor_.reason(); }

 private:
  using Reading = std::optional<Quantity>;

  Reading refuse(const std::string& reason) {
    cursor_.refuse(reason);
    return std::nullopt;
  }

  void refuseRest() {
    const char next = cursor_.next();
    if (next == '-')
      refuse("minus subtracts only inside parentheses; write it as (12' - 6\")");
    else if (isDigit(next))
      refuse("two numbers stand side by side; write a mark or a sign between them, as 12' 6\" or 12 + 6");
    else
      refuse("");
  }

  Reading sumAt(int depth) {
    cursor_.skipSpaces();
    const bool negative = cursor_.next() == '-';
    if (negative || cursor_.next() == '+') cursor_.skip();
    Reading total = productAt(depth);
    if (total && negative) total->value = ribwright::negative(total->value);
    while (total) {
      cursor_.skipSpaces();
      const bool minus = depth > 0 && cursor_.next() == '-';
      if (!minus && cursor_.next() != '+') break;
      cursor_.skip();
      Reading more = productAt(depth);
      if (!more) return std::nullopt;
      if (minus) more->value = ribwright::negative(more->value);
      total = added(*total, *more);
    }
    return total;
  }

  Reading productAt(int depth) {
    Reading result = primaryAt(depth);
    while (result) {
      cursor_.skipSpaces();
      const bool times = cursor_.next() == '*';
      if (!times && cursor_.next() != '/') break;
      cursor_.skip();
      const Reading other = primaryAt(depth);
      if (!other) return std::nullopt;
      result = times ? multiplied(*result, *other) : divided(*result, *other);
    }
    return result;
  }

  Reading primaryAt(int depth) {
    cursor_.skipSpaces();
    const char next = cursor_.next();
    if (next == '-' || next == '+') return refuse("a signed value inside needs parentheses, as 2 * (-3)");
    if (!cursor_.take('(')) return readLiteral(cursor_, depth > 0);
    if (depth == kDeepest) return refuse("more than 20 parentheses inside each other; write it simpler");
    Reading inner = sumAt(depth + 1);
    if (!inner) return std::nullopt;
    inner->slashed = false;
    cursor_.skipSpaces();
    if (!cursor_.take(')'))
      return cursor_.atEnd() ? refuse("a parenthesis is not closed; write ) behind it") : refuse("");
    return inner;
  }

  Reading added(const Quantity& a, const Quantity& b) {
    const bool isLength = a.isLength || b.isLength;
    const auto first = isLength ? inNanometres(cursor_, a) : a.value;
    const auto second = isLength ? inNanometres(cursor_, b) : b.value;
    if (!first || !second) return std::nullopt;
    return reckoned(sum(*first, *second), isLength, std::max(a.decimals, b.decimals));
  }

  Reading multiplied(const Quantity& a, const Quantity& b) {
    if (a.isLength && b.isLength)
      return refuse("a length times a length is an area; leave the mark off the number that only counts");
    return reckoned(product(a.value, b.value), a.isLength || b.isLength, 0);
  }

  Reading divided(const Quantity& a, const Quantity& b) {
    if (b.isLength) return refuse("what is divided by a length is no length; divide by a plain number, as 12' / 3");
    if (b.slashed) return refuse("it is not clear what the second / divides; write (12 / 3) / 4 or 12 / (3/4)");
    if (b.value.above == 0) return refuse("nothing can be divided by 0");
    return reckoned(quotient(a.value, b.value), a.isLength, 0);
  }

  Reading reckoned(const std::optional<ExactRatio>& value, bool isLength, int decimals) {
    if (!value) return refuse("the arithmetic is out of range; write fewer figures");
    return Quantity{*value, isLength, decimals, false};
  }

  // The one rounding of what was reckoned (ASTM E29 section 6).
  std::optional<Length> rounded(const ExactRatio& nanometres) {
    const Int128 whole = roundHalfEven(nanometres.above, nanometres.below);
    if (whole <= INT64_MAX && whole >= INT64_MIN) return Length::nanometres(static_cast<std::int64_t>(whole));
    refuse("it is out of range");
    return std::nullopt;
  }

  LengthCursor cursor_;
};

}  // namespace

Outcome<Length> parseLength(std::string_view text, const LengthStyle& style) {
  const std::string_view typed = trimmed(text);
  if (typed.empty()) return noLength(typed, style, "");
  if (typed.size() > kLongestText) return noLength(typed, style, "it is longer than 400 characters; write it shorter");
  const auto plain = plainSpelling(typed);
  if (!plain) return noLength(typed, style, "");
  LengthReader reader(*plain, style);
  const auto length = reader.read();
  if (!length) return noLength(typed, style, reader.reason());
  return *length;
}

}  // namespace ribwright
