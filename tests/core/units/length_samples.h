// What the tests of length text share: the four styles, reading that must succeed, and the fault that must come.
#pragma once

#include <array>
#include <catch2/catch.hpp>
#include <string>

#include "core/units/length_text.h"

namespace ribwright {

inline constexpr LengthStyle kFeetInches{UnitSystem::FeetInches, '.'};
inline constexpr LengthStyle kFeetInchesComma{UnitSystem::FeetInches, ','};
inline constexpr LengthStyle kMillimetres{UnitSystem::Millimetres, '.'};
inline constexpr LengthStyle kMillimetresComma{UnitSystem::Millimetres, ','};
inline constexpr std::array kStyles{kFeetInches, kFeetInchesComma, kMillimetres, kMillimetresComma};

inline Length read(std::string_view text, const LengthStyle& style) {
  const auto length = parseLength(text, style);
  if (!length) FAIL(length.faults().front().message);
  return length.value();
}

// "" when it was read.
inline std::string faultOf(std::string_view text, const LengthStyle& style) {
  const auto length = parseLength(text, style);
  if (length) return "";
  REQUIRE(length.faults().size() == 1);
  CHECK(length.faults().front().place.empty());
  return length.faults().front().message;
}

// The text of a file with the decimal sign of a style.
inline std::string withSign(std::string text, const LengthStyle& style) {
  for (char& c : text)
    if (c == '.') c = style.decimalSign;
  return text;
}

}  // namespace ribwright
