// The trade's rules: which way the laps face.
#include <cmath>
#include <numbers>

#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

long double x(const PlanPoint& p) { return static_cast<long double>(p.x.nanometres()); }
long double y(const PlanPoint& p) { return static_cast<long double>(p.y.nanometres()); }
long double awayFrom(const PlanPoint& a, const PlanPoint& b) { return std::hypot(x(b) - x(a), y(b) - y(a)); }

// Seen from outside, left to right: outside lies to the right of the way from the left corner to the right one.
bool sees(const PlanLine& wall, const PlanPoint& eye) {
  const Int128 along = Int128((wall.to.x - wall.from.x).nanometres()) * (eye.y - wall.from.y).nanometres();
  const Int128 across = Int128((wall.to.y - wall.from.y).nanometres()) * (eye.x - wall.from.x).nanometres();
  return along < across;
}

// Start at the end farther from where people stand, and work toward them.
bool bySight(const Site& site, const PlanLine& wall, StatedHand& hand) {
  long double left = 0, right = 0, weights = 0;
  for (const SightPoint& point : site.sightPoints) {
    if (!sees(wall, point.at)) continue;
    left += point.weight * awayFrom(wall.from, point.at);
    right += point.weight * awayFrom(wall.to, point.at);
    weights += point.weight;
  }
  if (weights == 0) return false;
  const long double difference = (left - right) / weights, limit = awayFrom(wall.from, wall.to) / 100;
  if (std::abs(std::abs(difference) - limit) < 10) hand.certain = false;
  if (std::abs(difference) <= limit) return false;
  hand.hand = difference > 0 ? Hand::LeftToRight : Hand::RightToLeft;
  hand.reason = HandReason::SightPoint;
  return true;
}

// Start at the end toward which the wind blows.
bool byWind(const Site& site, const PlanLine& wall, StatedHand& hand) {
  if (!site.windFrom) return false;
  const auto degrees = static_cast<long double>(site.windFrom->microdegrees + site.trueNorth.microdegrees) / 1e6L;
  const long double bearing = degrees * std::numbers::pi_v<long double> / 180;
  const long double width = awayFrom(wall.from, wall.to);
  const long double alongX = (x(wall.to) - x(wall.from)) / width, alongY = (y(wall.to) - y(wall.from)) / width;
  const long double along = -(std::sin(bearing) * alongX + std::cos(bearing) * alongY);
  if (std::abs(std::abs(along) - 0.01L) < 1e-7L) hand.certain = false;
  if (std::abs(along) < 0.01L) return false;
  hand.hand = along > 0 ? Hand::RightToLeft : Hand::LeftToRight;
  hand.reason = HandReason::Wind;
  return true;
}

}  // namespace

StatedHand statedHand(const Job& job, const Wall& wall, const StatedFace& face) {
  StatedHand rule;
  if (face.line && !bySight(job.site, *face.line, rule)) byWind(job.site, *face.line, rule);
  if (wall.hang == Hang::ByRule) return rule;
  StatedHand typed;
  typed.hand = wall.hang == Hang::LeftToRight ? Hand::LeftToRight : Hand::RightToLeft;
  typed.reason = HandReason::Typed;
  typed.againstRule = typed.hand != rule.hand && rule.reason != HandReason::Default;
  typed.certain = rule.certain;
  return typed;
}

}  // namespace ribwright::fuzz
