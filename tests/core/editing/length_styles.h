// How lengths are written in the tests of edits.
#pragma once

#include "core/units/length_text.h"

namespace ribwright {

inline constexpr LengthStyle feetInches{UnitSystem::FeetInches, '.'}, metric{UnitSystem::Millimetres, ','};

}  // namespace ribwright
