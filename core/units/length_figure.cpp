#include "core/units/length_figure.h"

#include <array>

#include "core/units/length_spelling.h"
#include "core/units/typed_text.h"

namespace ribwright {

namespace {

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

}  // namespace

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
  // "6 in." and "12 ft." as on many drawings.
  const bool mayHavePoint = mark == Mark::Feet || mark == Mark::Inches;
  if (!mayHavePoint || !cursor.take('.') || !isDigit(cursor.next())) return mark;
  cursor.refuse("the point could end the unit or begin a decimal; put a space behind it, as 12 ft. 6 in.");
  return std::nullopt;
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

}  // namespace ribwright
