#include "core/editing/typed_drag.h"

#include <string>
#include <vector>

#include "core/units/typed_text.h"

namespace ribwright {
namespace {

// Where the first sign between two lengths stands, and how long it is.
struct Sign {
  std::size_t at = std::string_view::npos, length = 0;
};

Sign signIn(std::string_view text, const LengthStyle& style) {
  Sign first;
  std::vector<std::string_view> signs = {"x", "X", "\u00d7", ";"};
  if (style.decimalSign != ',') signs.push_back(",");
  for (const std::string_view sign : signs) {
    const std::size_t at = text.find(sign);
    if (at < first.at) first = {at, sign.size()};
  }
  return first;
}

Outcome<std::optional<Length>> sideOf(std::string_view text, const LengthStyle& style) {
  if (trimmed(text).empty()) return std::optional<Length>();
  const auto length = parseLength(trimmed(text), style);
  if (!length) return length.faults();
  return std::optional<Length>(length.value());
}

Outcome<TypedDrag> twoSides(std::string_view first, std::string_view second, TypedDrag typed,
                            const LengthStyle& style) {
  const auto across = sideOf(first, style), up = sideOf(second, style);
  if (!across) return across.faults();
  if (!up) return up.faults();
  typed.across = across.value();
  typed.up = up.value();
  if (!typed.across && !typed.up) return Fault{"", "no length stands beside the sign; write it as 4' x 3'"};
  return typed;
}

// To the side that the pointer is on.
Length toward(Length length, Length start, Length pointer) { return pointer < start ? start - length : start + length; }

}  // namespace

Outcome<TypedDrag> parseTypedDrag(std::string_view text, const LengthStyle& style) {
  TypedDrag typed;
  std::string_view left = trimmed(text);
  if (left.starts_with('=')) {
    typed.place = true;
    left = trimmed(left.substr(1));
  }
  if (left.empty()) return Fault{"", "nothing is typed; write a length, as 4' 6\", or two, as 4' x 3'"};
  const Sign sign = signIn(left, style);
  if (sign.length > 0) return twoSides(left.substr(0, sign.at), left.substr(sign.at + sign.length), typed, style);
  const auto length = parseLength(left, style);
  if (!length) return length.faults();
  typed.main = length.value();
  return typed;
}

FacePoint endOfDrag(const TypedDrag& typed, const FacePoint& start, const FacePoint& pointer, DragFor drag) {
  const bool level = absolute(pointer.u - start.u) >= absolute(pointer.z - start.z);
  const auto along = [&](const std::optional<Length>& length, Length from, Length to) {
    if (!length) return typed.main && drag == DragFor::Moving ? from : to;
    return typed.place ? *length : toward(*length, from, to);
  };
  const auto across = typed.main && level ? typed.main : typed.across;
  const auto up = typed.main && !level ? typed.main : typed.up;
  return {along(across, start.u, pointer.u), along(up, start.z, pointer.z)};
}

}  // namespace ribwright
