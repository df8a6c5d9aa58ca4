#include "core/units/angle.h"

#include <cmath>
#include <numbers>
#include <stdexcept>

namespace ribwright {

namespace {

constexpr std::int64_t kRight = Angle::degrees(90).microdegrees;
constexpr std::int64_t kCircle = 4 * kRight;
constexpr std::int64_t kHalfRight = Angle::degrees(45).microdegrees;

long double radians(std::int64_t microdegrees) {
  return static_cast<long double>(microdegrees) * (std::numbers::pi_v<long double> / 180e6L);
}

// 0 <= microdegrees <= 90 degrees. Above 45 degrees the other angle's cosine, so that sine and cosine agree to the last
// digit.
std::int64_t firstQuadrantSine(std::int64_t microdegrees) {
  if (microdegrees == 0) return 0;
  if (microdegrees == kRight) return 1'000'000'000;
  const long double sine =
      microdegrees <= kHalfRight ? std::sin(radians(microdegrees)) : std::cos(radians(kRight - microdegrees));
  return std::llround(sine * 1e9L);
}

long double tangent(std::int64_t microdegrees) {
  if (microdegrees <= kHalfRight) return std::tan(radians(microdegrees));
  return 1 / std::tan(radians(kRight - microdegrees));
}

Length riseAtAngle(Angle angle, Length level) {
  if (angle.microdegrees < 0 || angle.microdegrees >= kRight)
    throw std::domain_error("a slope lies from 0 to less than 90 degrees");
  if (angle.microdegrees == 0) return Length();
  if (angle.microdegrees == kHalfRight) return level;
  const long double rise = std::nearbyint(static_cast<long double>(level.nanometres()) * tangent(angle.microdegrees));
  if (std::abs(rise) >= 0x1p63L) throw std::overflow_error("length out of range");
  return Length::nanometres(static_cast<std::int64_t>(rise));
}

}  // namespace

std::int64_t sineBillionths(Angle angle) {
  std::int64_t turned = angle.microdegrees % kCircle;
  if (turned < 0) turned += kCircle;
  const bool lowerHalf = turned >= 2 * kRight;
  if (lowerHalf) turned -= 2 * kRight;
  const std::int64_t size = firstQuadrantSine(turned <= kRight ? turned : 2 * kRight - turned);
  return lowerHalf ? -size : size;
}

std::int64_t cosineBillionths(Angle angle) {
  // Within one turn first: adding a right angle to the largest angle would leave the range.
  return sineBillionths(Angle{angle.microdegrees % kCircle + kRight});
}

Length riseOver(const Slope& slope, Length level) {
  if (slope.as == Slope::As::Angle) return riseAtAngle(slope.angle, level);
  if (slope.run <= Length()) throw std::domain_error("a slope needs a run");
  return scaled(level, slope.rise.nanometres(), slope.run.nanometres());
}

}  // namespace ribwright
