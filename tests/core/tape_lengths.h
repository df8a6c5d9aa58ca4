// Lengths as a tape reads them.
#pragma once

#include "core/units/length.h"

namespace ribwright {

inline Length ft(std::int64_t feet, std::int64_t inches = 0) { return Length::feet(feet, inches); }
inline Length in(std::int64_t whole, std::int64_t sixteenths = 0) { return Length::inches(whole, sixteenths * 4); }
inline Length mm(std::int64_t count) { return Length::millimetres(count); }

}  // namespace ribwright
