#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

Length tapeMark(const LengthStyle& style) {
  return style.units == UnitSystem::Millimetres ? Length::millimetres(1) : Length::sixtyFourths(4);
}

// The page states the unit once, so that figures stay short.
std::string withoutUnit(std::string text) {
  if (text.ends_with(" mm")) text.resize(text.size() - 3);
  return text;
}

}  // namespace

Length asTapeReads(Length length, const LengthStyle& style) { return roundTo(length, tapeMark(style)); }

std::string dimensionText(Length length, const LengthStyle& style) {
  return withoutUnit(shownText(length, style, 16, 0));
}

std::string cutText(Length length, const LengthStyle& style) {
  const bool whole = rest(length, tapeMark(style)) == Length();
  return withoutUnit(shownText(length, style, whole ? 16 : 64, whole ? 0 : 1));
}

}  // namespace ribwright
