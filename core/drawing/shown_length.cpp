#include "core/drawing/shown_length.h"

namespace ribwright {

namespace {

// The page states the unit once, so that figures stay short.
std::string withoutUnit(std::string text) {
  if (text.ends_with(" mm")) text.resize(text.size() - 3);
  return text;
}

}  // namespace

Length asTapeReads(Length length, const LengthStyle& style) { return roundTo(length, tapeMark(style.units)); }

std::string dimensionText(Length length, const LengthStyle& style) {
  return withoutUnit(shownText(length, style, 16, 0));
}

std::string cutText(Length length, const LengthStyle& style) { return withoutUnit(fineText(length, style)); }

}  // namespace ribwright
