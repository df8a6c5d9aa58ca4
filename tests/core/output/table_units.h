// The units in which tables are written.
#pragma once

#include "core/units/length_text.h"

namespace ribwright {

inline constexpr auto feetInches = UnitSystem::FeetInches;
inline constexpr auto millimetres = UnitSystem::Millimetres;

}  // namespace ribwright
