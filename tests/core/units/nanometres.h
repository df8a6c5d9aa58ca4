// Lengths by the count of their nanometres.
#pragma once

#include "core/units/length.h"

namespace ribwright {

inline Length nm(std::int64_t count) { return Length::nanometres(count); }

}  // namespace ribwright
