// Angles and roof slopes.
//
// An angle is whole millionths of a degree. A slope is either a rise per run (exact) or an angle; it becomes heights once,
// where a building is turned into walls, and nowhere else (see riseOver).
#pragma once

#include <compare>
#include <cstdint>

#include "core/units/length.h"

namespace ribwright {

struct Angle {
  std::int64_t microdegrees = 0;
  static constexpr Angle degrees(std::int64_t whole) { return Angle{whole * 1'000'000}; }
  constexpr auto operator<=>(const Angle&) const = default;
};

// Sine and cosine as whole thousand-millionths (1e9 = 1); exact at multiples of 90 degrees, rounded elsewhere.
std::int64_t sineBillionths(Angle angle);
std::int64_t cosineBillionths(Angle angle);

struct Slope {
  enum class As { RisePerRun, Angle };
  As as = As::RisePerRun;
  Length rise;                      // with run, as typed: 4:12 is 4 in and 12 in; 150 in 250 is 150 mm and 250 mm
  Length run = Length::inches(12);  // > 0
  Angle angle;                      // 0 <= angle < 90 degrees

  static constexpr Slope per12(std::int64_t riseInches, std::int64_t sixtyFourths = 0) {
    return Slope{As::RisePerRun, Length::inches(riseInches, sixtyFourths), Length::inches(12), {}};
  }
  constexpr bool operator==(const Slope&) const = default;
};

// How far a line of this slope rises over a level distance; rounded half to even to the nanometre. An angle goes through
// its tangent; 0 and 45 degrees are exact.
Length riseOver(const Slope& slope, Length level);

}  // namespace ribwright
