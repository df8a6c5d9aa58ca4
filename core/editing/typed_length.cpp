#include "core/editing/typed_length.h"

namespace ribwright {

std::string typedLength(Length length, const LengthStyle& style) {
  const Length finest = style.units == UnitSystem::Millimetres ? Length::nanometres(100'000) : Length::sixtyFourths(1);
  if (rest(length, finest) == Length()) return fineText(length, style);
  return shownText(length, {UnitSystem::Millimetres, style.decimalSign}, 16, 6);
}

std::string_view withoutBlanks(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n";
  const std::size_t first = text.find_first_not_of(blanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

}  // namespace ribwright
