#include "core/units/length_literal.h"

#include <array>

#include "core/units/length_spelling.h"

namespace ribwright {

namespace {

enum class Mark { None, Feet, Inches, Millimetres, Centimetres, Metres };

struct MarkMeaning {
  Int128 nanometres;
  int decimals;  // the finest that is read
};

// Inches and feet are read to nine decimals, as tables print them, to the nearest nanometre (0.000000001 ft is 0.3 nm);
// metric decimals are whole nanometres or refused.
MarkMeaning meaning(Mark mark) {
  switch (mark) {
    case Mark::Feet:
      return {304'800'000, 9};
    case Mark::Inches:
      return {25'400'000, 9};
    case Mark::Centimetres:
      return {10'000'000, 7};
    case Mark::Metres:
      return {1'000'000'000, 9};
    case Mark::Millimetres:
    case Mark::None:
      break;
  }
  return {1'000'000, 6};
}

Mark defaultMark(const LengthCursor& cursor) { return cursor.feetInches() ? Mark::Inches : Mark::Millimetres; }

// 3   3.5   3/4   3 1/2   3-1/2
struct Figure {
  enum class Form { Whole, Decimal, Fraction, Mixed, Dashed };
  ExactRatio value;
  Form form = Form::Whole;
  int digits = 0;
  int decimals = 0;
  ExactRatio whole;           // without its fraction
  std::size_t wholeEnds = 0;  // where the cursor stood behind the whole number
  bool isBelow(Int128 limit) const { return value.above < limit * value.below; }
};

constexpr int kMostDigits = 18;

// Digits at the cursor, behind `number`; how many came, or nothing when there are too many.
std::optional<int> takeDigits(LengthCursor& cursor, Int128& number) {
  int count = 0;
  for (; isDigit(cursor.next()); cursor.skip(), ++count) {
    if (count == kMostDigits) {
      cursor.refuse("a number has more than 18 digits on one side; write it shorter");
      return std::nullopt;
    }
    number = number * 10 + (cursor.next() - '0');
  }
  return count;
}

bool refuseWrongSign(LengthCursor& cursor) {
  if (cursor.style().decimalSign == '.')
    return cursor.refuse("a comma is no decimal sign here and thousands stand without a separator; write 1000 or 1.5");
  return cursor.refuse("a point is no decimal sign here and thousands stand without a separator; write 1000 or 1,5");
}

// Behind a decimal sign.
bool takeDecimals(LengthCursor& cursor, Figure& figure, Int128 number) {
  const auto decimals = takeDigits(cursor, number);
  if (!decimals) return false;
  if (*decimals == 0)
    return cursor.refuse("a number ends with its decimal sign; write the decimals or leave the sign out");
  Int128 below = 1;
  for (int i = 0; i < *decimals; ++i) below *= 10;
  figure.form = Figure::Form::Decimal;
  figure.decimals = *decimals;
  figure.value = *ratio(number, below);
  return true;
}

bool takeNumber(LengthCursor& cursor, Figure& figure) {
  Int128 number = 0;
  const auto digits = takeDigits(cursor, number);
  if (!digits) return false;
  const char sign = cursor.style().decimalSign;
  if (*digits == 0 && !(cursor.next() == sign && isDigit(cursor.next(1)))) return cursor.refuse("");
  const ExactRatio whole{number, 1};
  figure = Figure{whole, Figure::Form::Whole, *digits, 0, whole, cursor.place()};
  if (cursor.take(sign) && !takeDecimals(cursor, figure, number)) return false;
  if (cursor.next() == (sign == '.' ? ',' : '.') && isDigit(cursor.next(1))) return refuseWrongSign(cursor);
  return true;
}

// a/b without spaces inside, standing at the cursor. Nothing, and the cursor where it was, when there is none.
std::optional<ExactRatio> peekFraction(LengthCursor& cursor) {
  const std::size_t start = cursor.place();
  Int128 above = 0;
  Int128 below = 0;
  const auto count = takeDigits(cursor, above);
  if (count && *count > 0 && cursor.next() == '/' && isDigit(cursor.next(1))) {
    cursor.skip();
    if (takeDigits(cursor, below) && below != 0) return ratio(above, below);
  }
  cursor.goTo(start);
  return std::nullopt;
}

// Behind a whole number: its fraction after spaces or a dash, as in 3 1/2 and 3-1/2. A dash binds only a fraction
// below 1.
bool takeMixedFraction(LengthCursor& cursor, Figure& figure) {
  const bool dash = cursor.next() == '-';
  if (dash)
    cursor.skip();
  else
    cursor.skipSpaces();
  const auto fraction = cursor.place() == figure.wholeEnds ? std::nullopt : peekFraction(cursor);
  if (!fraction || (dash && !fraction->isProper())) {
    cursor.goTo(figure.wholeEnds);
    return true;
  }
  if (!fraction->isProper()) return cursor.refuse("the fraction behind a whole number must be less than 1");
  figure.value = *sum(figure.value, *fraction);
  figure.form = dash ? Figure::Form::Dashed : Figure::Form::Mixed;
  return true;
}

bool takeFigure(LengthCursor& cursor, Figure& figure) {
  if (!takeNumber(cursor, figure)) return false;
  if (figure.form != Figure::Form::Whole) return true;
  if (cursor.next() != '/' || !isDigit(cursor.next(1))) return takeMixedFraction(cursor, figure);
  cursor.skip();
  Int128 below = 0;
  if (!takeDigits(cursor, below)) return false;
  if (below == 0) return cursor.refuse("nothing can be divided by 0");
  figure.value = *ratio(figure.value.above, below);
  figure.form = Figure::Form::Fraction;
  return true;
}

std::optional<Mark> markOfWord(std::string_view word) {
  struct Word {
    std::string_view word;
    Mark mark;
  };
  constexpr std::array words{
      Word{"ft", Mark::Feet},        Word{"feet", Mark::Feet},      Word{"foot", Mark::Feet},
      Word{"in", Mark::Inches},      Word{"inch", Mark::Inches},    Word{"inches", Mark::Inches},
      Word{"mm", Mark::Millimetres}, Word{"cm", Mark::Centimetres}, Word{"m", Mark::Metres},
  };
  for (const Word& known : words)
    if (known.word == word) return known.mark;
  return std::nullopt;
}

// Nothing when a word stands there that is no unit. Spaces before the mark are allowed; without a mark the cursor
// stays.
std::optional<Mark> takeMark(LengthCursor& cursor) {
  const std::size_t start = cursor.place();
  cursor.skipSpaces();
  if (cursor.take('\'')) return Mark::Feet;
  if (cursor.take('"')) return Mark::Inches;
  std::string word;
  for (; isLetter(cursor.next()); cursor.skip())
    word += cursor.next() <= 'Z' ? static_cast<char>(cursor.next() - 'A' + 'a') : cursor.next();
  if (word.empty()) {
    cursor.goTo(start);
    return Mark::None;
  }
  const auto mark = markOfWord(word);
  if (!mark) cursor.refuse("");
  // "6 in." and "12 ft." as on many drawings; a point before a digit is a number's.
  const bool mayHavePoint = mark == Mark::Feet || mark == Mark::Inches;
  if (mayHavePoint && cursor.next() == '.' && !isDigit(cursor.next(1))) cursor.skip();
  return mark;
}

std::optional<ExactRatio> measured(LengthCursor& cursor, const ExactRatio& value, int decimals, Mark mark) {
  const MarkMeaning unit = meaning(mark);
  const auto nanometres = product(value, ExactRatio{unit.nanometres, 1});
  if (!nanometres)
    cursor.refuse("it is out of range");
  else if (decimals > unit.decimals && !nanometres->isWhole()) {
    cursor.refuse("it is finer than a nanometre; write fewer decimals");
    return std::nullopt;
  }
  return nanometres;
}

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
