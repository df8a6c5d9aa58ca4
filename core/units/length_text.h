// Lengths as people write and read them: one parser and one writer for file, screen, table and command line.
//
// Understood (decimal sign by LengthStyle): 12' 3-1/2"   12 ft 3.5 in   12-3-1/2   12-3.5   3-1/2 (inches)   147.5   3750 mm   3.75 m
// "12' - 6"" is drawing style for 12 ft 6 in. + * / and ( ) work; minus subtracts only inside parentheses, with a space on both
// sides wherever it could also join ((12' - 6") is 11 ft 6 in). A sign in front makes the value negative. A suffix beats the
// default unit. Dash forms without a unit mark are refused when the default is millimetres. Ambiguous text is refused with a
// reason, never guessed; nothing is clamped, no sign is dropped. Never looks at the process locale.
// Arithmetic is exact and rounded once, half to even, to the nanometre (ASTM E29 section 6). A typed decimal of inches or feet
// is read to the nearest nanometre when it has at most nine decimals, as tables print them; one that is finer, or a metric one
// that is no whole nanometre, is refused.
// Errors: one Fault with an empty place, its message quoting the text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/units/length.h"
#include "core/units/outcome.h"

namespace ribwright {

enum class UnitSystem { FeetInches, Millimetres };

struct LengthStyle {
  UnitSystem units = UnitSystem::FeetInches;  // what a bare number means: inches, or millimetres
  char decimalSign = '.';                     // '.' or ','
  bool operator==(const LengthStyle&) const = default;
};

Outcome<Length> parseLength(std::string_view text, const LengthStyle& style);

// A string of bays or girt spacings in one field: 20', 4@25', 20'   (also a pasted column of numbers, one a line).
// With a decimal comma the separator is ';' or a new line; else also ','. A blank text holds no lengths; a blank between two
// separators is refused. At most 10 000 lengths. Each unreadable item is a fault of its own: item 2: "4x" is no length; ...
Outcome<std::vector<Length>> parseLengthString(std::string_view text, const LengthStyle& style);
// The inverse, equal neighbours gathered as n@length.
std::string lengthStringText(const std::vector<Length>& lengths, const LengthStyle& style);

// Exact text for files: feet and inches to 1/64 in when that is exact and the units are FeetInches, else millimetres
// with up to six decimals. Decimal sign '.', always a unit mark, so parseLength reads back the same nanometre.
std::string exactText(Length length, UnitSystem units);

// Text for people: feet-inches rounded half to even to 1/denominator in (a power of two, 1..64), or millimetres rounded
// to `decimals` (0..6). What is shown parses to what is shown.
std::string shownText(Length length, const LengthStyle& style, int denominator = 16, int decimals = 0);

// The mark of a tape that people read to: 1/16 in, or 1 mm.
Length tapeMark(UnitSystem units);
// To a mark of the tape where the length is one; else to 1/64 in or 0.1 mm.
std::string fineText(Length length, const LengthStyle& style);

// Shortest decimal that reads back the same nanometre: inches, feet and metres with at most 9 decimals, millimetres with
// at most 6. '.' always.
std::string decimalInches(Length length);
std::string decimalFeet(Length length);
std::string decimalMillimetres(Length length);
std::string decimalMetres(Length length);

}  // namespace ribwright
