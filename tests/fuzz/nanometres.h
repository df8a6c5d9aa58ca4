// Lengths as whole nanometres and back, and as complaints tell them.
#pragma once

#include <cstdint>
#include <string>

#include "core/units/length.h"

namespace ribwright::fuzz {

using Nm = std::int64_t;

inline constexpr Length kOne = Length::nanometres(1);

inline Nm nm(Length length) { return length.nanometres(); }
inline Length at(Nm length) { return Length::nanometres(length); }

inline std::string text(Nm length) { return std::to_string(length); }
inline std::string text(Length length) { return text(nm(length)); }

}  // namespace ribwright::fuzz
