// One length or plain number as it stands in an expression: 12' 3-1/2"   12-3.5   3/4   3750 mm   2
//
// The dash rules stand here, because a dash may join feet to inches, join inches to their fraction, or subtract.
#pragma once

#include <optional>

#include "core/units/exact_ratio.h"
#include "core/units/length_cursor.h"

namespace ribwright {

// What an expression is worth so far: nanometres, or a number that has no unit yet.
struct Quantity {
  ExactRatio value;
  bool isLength = false;
  int decimals = 0;      // as typed, for a number; 0 when it was reckoned
  bool slashed = false;  // a fraction a/b without a mark: unclear behind a division sign
};

// Reads from where the cursor stands; nothing when refused. Inside parentheses a dash subtracts where it cannot be read
// otherwise or has a space on both sides; what could be either is refused.
std::optional<Quantity> readLiteral(LengthCursor& cursor, bool insideParentheses);

// A number with the default unit; refused when it is typed finer than a nanometre.
std::optional<ExactRatio> inNanometres(LengthCursor& cursor, const Quantity& quantity);

}  // namespace ribwright
