// The smallest words of a length: a figure such as 3, 3.5, 3/4, 3 1/2, 3-1/2, and a unit mark.
//
// Each reads from where the cursor stands. false or nothing: refused, and the cursor holds the reason.
#pragma once

#include <optional>

#include "core/units/exact_ratio.h"
#include "core/units/length_cursor.h"

namespace ribwright {

struct Figure {
  enum class Form { Whole, Decimal, Fraction, Mixed, Dashed };
  ExactRatio value;
  Form form = Form::Whole;
  int digits = 0;  // of the whole number
  int decimals = 0;
  ExactRatio whole;           // without its fraction
  std::size_t wholeEnds = 0;  // where the cursor stood behind the whole number
  bool isBelow(Int128 limit) const { return value.above < limit * value.below; }
};

// A dash after the whole number is taken only with a fraction less than 1 right behind it.
bool takeFigure(LengthCursor& cursor, Figure& figure);

enum class Mark { None, Feet, Inches, Millimetres, Centimetres, Metres };

// Mark::None when no mark stands there; nothing when a word stands there that is no unit. Spaces may come first.
std::optional<Mark> takeMark(LengthCursor& cursor);

// Nanometres, not rounded yet. Refused when out of range or when `decimals` typed decimals are finer than the unit
// allows.
std::optional<ExactRatio> measured(LengthCursor& cursor, const ExactRatio& value, int decimals, Mark mark);

}  // namespace ribwright
