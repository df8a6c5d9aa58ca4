// One length or plain number as it stands in an expression: 12' 3-1/2"   12-3.5   3/4   3750 mm   2
//
// The dash rules stand here, because a dash may join feet to inches, join inches to their fraction, or subtract.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/units/exact_ratio.h"
#include "core/units/length_text.h"

namespace ribwright {

// What an expression is worth so far: nanometres, or a number that has no unit yet.
struct Quantity {
  ExactRatio value;
  bool isLength = false;
  int decimals = 0;      // as typed, for a number; 0 when it was reckoned
  bool slashed = false;  // a fraction a/b without a mark: unclear behind a division sign
};

// Walks over text in plain spelling. Whoever refuses says why; an empty reason is "not understood".
class LengthCursor {
 public:
  LengthCursor(std::string_view text, const LengthStyle& style) : text_(text), style_(style) {}

  const LengthStyle& style() const { return style_; }
  bool feetInches() const { return style_.units == UnitSystem::FeetInches; }
  bool atEnd() const { return at_ >= text_.size(); }
  // '\0' beyond the end.
  char next(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  char before() const { return at_ > 0 ? text_[at_ - 1] : '\0'; }
  std::size_t place() const { return at_; }
  void goTo(std::size_t place) { at_ = place; }
  void skip(std::size_t characters = 1) { at_ += characters; }
  void skipSpaces() {
    while (next() == ' ') skip();
  }
  bool take(char c) {
    if (next() != c) return false;
    skip();
    return true;
  }

  // The first reason stays. Always false, so that it reads `return cursor.refuse(...)`.
  bool refuse(const std::string& reason) {
    if (!refused_) reason_ = reason;
    refused_ = true;
    return false;
  }
  const std::string& reason() const { return reason_; }

 private:
  std::string_view text_;
  LengthStyle style_;
  std::size_t at_ = 0;
  bool refused_ = false;
  std::string reason_;
};

// Reads from where the cursor stands; nothing when refused. Inside parentheses a dash subtracts where it cannot be read
// otherwise or has a space on both sides; what could be either is refused.
std::optional<Quantity> readLiteral(LengthCursor& cursor, bool insideParentheses);

// A number with the default unit; refused when it is typed finer than a nanometre.
std::optional<ExactRatio> inNanometres(LengthCursor& cursor, const Quantity& quantity);

}  // namespace ribwright
