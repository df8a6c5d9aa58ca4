#include "core/units/length_literal.h"

#include "core/units/length_figure.h"
#include "core/units/length_spelling.h"
#include "core/units/typed_text.h"

namespace ribwright {

namespace {

Mark defaultMark(const LengthCursor& cursor) { return cursor.feetInches() ? Mark::Inches : Mark::Millimetres; }

std::optional<Quantity> asLength(LengthCursor& cursor, const Figure& figure, Mark mark) {
  const auto nanometres = measured(cursor, figure.value, figure.decimals, mark);
  if (!nanometres) return std::nullopt;
  return Quantity{*nanometres, true};
}

std::optional<Quantity> feetAndInches(LengthCursor& cursor, const Figure& feet, const Figure& inches) {
  const auto upper = measured(cursor, feet.value, feet.decimals, Mark::Feet);
  const auto lower = measured(cursor, inches.value, inches.decimals, Mark::Inches);
  if (!upper || !lower) return std::nullopt;
  const auto both = sum(*upper, *lower);
  if (!both) {
    cursor.refuse("it is out of range");
    return std::nullopt;
  }
  return Quantity{*both, true};
}

std::optional<Quantity> refused(LengthCursor& cursor, const std::string& reason) {
  cursor.refuse(reason);
  return std::nullopt;
}

const std::string kUnmarkedDash =
    "a dash joins feet and inches, and lengths here are millimetres; mark it as 12' 3-1/2\", or subtract as (12 - 3)";
const std::string kEitherDash =
    "in parentheses this dash could join or subtract; write (12' - 6\") with spaces to subtract, (12' 6\") to join";
const std::string kUnmarkedInches =
    "the inches behind the feet have no mark, and lengths here are millimetres; mark them as 12' 6\"";
const std::string kInchesOverTwelve = "inches behind feet must be less than 12 where only the feet are marked";

// The inches behind a dash that follows marked feet: 12' - 6"   12'-6   12'-3-1/2". When the dash joins nothing the
// cursor goes back to `feetEnd`, before the dash, and the feet stand alone.
std::optional<Quantity> dashedInches(LengthCursor& cursor, const Figure& feet, std::size_t feetEnd, bool inside) {
  const auto feetAlone = [&] {
    cursor.goTo(feetEnd);
    return asLength(cursor, feet, Mark::Feet);
  };
  const bool spaceBefore = cursor.before() == ' ';
  cursor.skip();
  const bool spaceBehind = cursor.next() == ' ';
  cursor.skipSpaces();
  const bool number = isDigit(cursor.next()) || cursor.next() == cursor.style().decimalSign;
  if (feet.form != Figure::Form::Whole || !number || (inside && spaceBefore && spaceBehind)) return feetAlone();
  Figure inches;
  if (!takeFigure(cursor, inches)) return std::nullopt;
  const auto mark = takeMark(cursor);
  if (!mark) return std::nullopt;
  const bool inchMark = *mark == Mark::Inches;
  if (inside && !inchMark && !cursor.feetInches()) return feetAlone();
  if ((!inchMark && *mark != Mark::None) || !inches.isBelow(12)) return feetAlone();
  if (inside) return refused(cursor, kEitherDash);
  if (!inchMark && !cursor.feetInches()) return refused(cursor, kUnmarkedInches);
  return feetAndInches(cursor, feet, inches);
}

// Feet with their mark have been read: 12'   12' 6"   12' - 6"   12' 3
std::optional<Quantity> behindFeet(LengthCursor& cursor, const Figure& feet, bool inside) {
  const std::size_t feetEnd = cursor.place();
  cursor.skipSpaces();
  if (cursor.next() == '-') return dashedInches(cursor, feet, feetEnd, inside);
  if (!isDigit(cursor.next()) && cursor.next() != cursor.style().decimalSign) {
    cursor.goTo(feetEnd);
    return asLength(cursor, feet, Mark::Feet);
  }
  if (feet.form != Figure::Form::Whole) return refused(cursor, "feet before inches must be a whole number");
  Figure inches;
  if (!takeFigure(cursor, inches)) return std::nullopt;
  const auto mark = takeMark(cursor);
  if (!mark) return std::nullopt;
  if (*mark == Mark::None && !cursor.feetInches()) return refused(cursor, kUnmarkedInches);
  if (*mark == Mark::None && (!inches.isBelow(12) || inches.digits > 2)) return refused(cursor, kInchesOverTwelve);
  if (*mark != Mark::None && *mark != Mark::Inches)
    return refused(cursor, "only inches stand behind feet; write + between two lengths");
  if (inches.form == Figure::Form::Fraction && !inches.value.isProper())
    return refused(cursor, "a fraction behind feet must be less than 1 in; write a space or a sign between numbers");
  return feetAndInches(cursor, feet, inches);
}

// A whole number without a mark, then a dash and a digit: 12-3.5   12-3-1/2
std::optional<Quantity> dashedFeet(LengthCursor& cursor, const Figure& feet, bool inside) {
  const auto numberAlone = [&] {
    cursor.goTo(feet.wholeEnds);
    return Quantity{feet.value};
  };
  if (!cursor.feetInches()) return inside ? numberAlone() : refused(cursor, kUnmarkedDash);
  cursor.skip();
  Figure inches;
  if (!takeFigure(cursor, inches)) return std::nullopt;
  const auto mark = takeMark(cursor);
  if (!mark) return std::nullopt;
  const bool couldJoin = *mark == Mark::None && inches.isBelow(12) && inches.form != Figure::Form::Fraction;
  if (inside) return couldJoin ? refused(cursor, kEitherDash) : numberAlone();
  if (*mark != Mark::None) return refused(cursor, "mark both or none; write 12' 3-1/2\" or 12-3-1/2");
  if (inches.form == Figure::Form::Fraction) return refused(cursor, "the fraction behind a dash must be less than 1");
  if (!inches.isBelow(12)) return refused(cursor, "inches behind a dash must be less than 12");
  return feetAndInches(cursor, feet, inches);
}

// 3-1/2 with or without its mark.
std::optional<Quantity> dashedFraction(LengthCursor& cursor, const Figure& figure, Mark mark, bool inside) {
  if (mark == Mark::Inches) return asLength(cursor, figure, mark);
  const bool couldJoin = mark == Mark::Feet || (mark == Mark::None && cursor.feetInches());
  if (inside && couldJoin) return refused(cursor, kEitherDash);
  if (inside) {
    cursor.goTo(figure.wholeEnds);
    return Quantity{figure.whole};
  }
  if (mark == Mark::None && cursor.feetInches()) return asLength(cursor, figure, Mark::Inches);
  if (mark == Mark::Feet) return behindFeet(cursor, figure, inside);
  return refused(cursor, kUnmarkedDash);
}

}  // namespace

std::optional<ExactRatio> inNanometres(LengthCursor& cursor, const Quantity& quantity) {
  if (quantity.isLength) return quantity.value;
  return measured(cursor, quantity.value, quantity.decimals, defaultMark(cursor));
}

std::optional<Quantity> readLiteral(LengthCursor& cursor, bool insideParentheses) {
  Figure figure;
  if (!takeFigure(cursor, figure)) return std::nullopt;
  const auto mark = takeMark(cursor);
  if (!mark) return std::nullopt;
  if (figure.form == Figure::Form::Dashed) return dashedFraction(cursor, figure, *mark, insideParentheses);
  if (*mark == Mark::Feet) return behindFeet(cursor, figure, insideParentheses);
  if (*mark != Mark::None) return asLength(cursor, figure, *mark);
  const bool dashFollows = cursor.next() == '-' && isDigit(cursor.next(1));
  if (figure.form == Figure::Form::Whole && dashFollows) return dashedFeet(cursor, figure, insideParentheses);
  if (figure.form == Figure::Form::Mixed && !cursor.feetInches())
    return refused(cursor, "a mixed fraction has no mark, and lengths here are millimetres; write 3 1/2 in or 3.5");
  return Quantity{figure.value, false, figure.decimals, figure.form == Figure::Form::Fraction};
}

}  // namespace ribwright
