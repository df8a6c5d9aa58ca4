#include "core/layout/hang_direction.h"

#include <algorithm>

#include "core/layout/whole_root.h"

namespace ribwright {

namespace {

Int128 cross(const PlanPoint& from, const PlanPoint& to, const PlanPoint& point) {
  const Int128 ax = (to.x - from.x).nanometres(), ay = (to.y - from.y).nanometres();
  const Int128 bx = (point.x - from.x).nanometres(), by = (point.y - from.y).nanometres();
  return ax * by - ay * bx;
}

// In plan the corners run counter-clockwise, so the building lies to the left of the line from a wall's left corner to
// its right corner, and whoever sees the wall stands to the right of it.
bool isSeenFrom(const PlanLine& line, const PlanPoint& eye) { return cross(line.from, line.to, eye) < 0; }

std::optional<Hand> bySight(const Job& job, const WallFace& face) {
  Int128 fartherLeft = 0;  // weighted sum of (distance to the left corner - distance to the right corner)
  Int128 weights = 0;
  for (const SightPoint& sight : job.site.sightPoints) {
    if (insideOutline(job.building.outline, sight.at) || !isSeenFrom(*face.line, sight.at)) continue;
    const Length difference = distance(sight.at, face.line->from) - distance(sight.at, face.line->to);
    fartherLeft += Int128(difference.nanometres()) * sight.weight;
    weights += sight.weight;
  }
  if (weights == 0) return std::nullopt;
  const Int128 tie = Int128(face.width.nanometres()) * weights;  // 100 times the tie
  if (fartherLeft * 100 > tie) return Hand::LeftToRight;
  if (fartherLeft * 100 < -tie) return Hand::RightToLeft;
  return std::nullopt;
}

std::optional<Hand> byWind(const Job& job, const WallFace& face) {
  if (!job.site.windFrom) return std::nullopt;
  // Toward which it blows, clockwise from the plan's +y.
  const Angle toward{job.site.windFrom->microdegrees + job.site.trueNorth.microdegrees +
                     Angle::degrees(180).microdegrees};
  const Int128 dx = (face.line->to.x - face.line->from.x).nanometres();
  const Int128 dy = (face.line->to.y - face.line->from.y).nanometres();
  const Int128 along = dx * sineBillionths(toward) + dy * cosineBillionths(toward);  // 1e9 x width at full component
  const Int128 onePercent = Int128(face.width.nanometres()) * 10'000'000;
  if (along >= onePercent) return Hand::RightToLeft;  // blows toward the right corner: start there
  if (along <= -onePercent) return Hand::LeftToRight;
  return std::nullopt;
}

HangDirection byRule(const Job& job, const WallFace& face) {
  if (!face.line) return {Hand::LeftToRight, HandReason::Default, false};
  if (const auto hand = bySight(job, face)) return {*hand, HandReason::SightPoint, false};
  if (const auto hand = byWind(job, face)) return {*hand, HandReason::Wind, false};
  return {Hand::LeftToRight, HandReason::Default, false};
}

}  // namespace

bool insideOutline(const std::vector<PlanPoint>& outline, const PlanPoint& point) {
  bool inside = false;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const PlanPoint& a = outline[i];
    const PlanPoint& b = outline[(i + 1) % outline.size()];
    const Int128 turn = cross(a, b, point);
    const bool between = std::min(a.x, b.x) <= point.x && point.x <= std::max(a.x, b.x) &&
                         std::min(a.y, b.y) <= point.y && point.y <= std::max(a.y, b.y);
    if (turn == 0 && between) return true;
    if ((a.y > point.y) != (b.y > point.y) && (turn > 0) == (b.y > a.y)) inside = !inside;
  }
  return inside;
}

HangDirection hangDirection(const Job& job, const Wall& wall, const WallFace& face) {
  const HangDirection ruled = byRule(job, face);
  if (wall.hang == Hang::ByRule) return ruled;
  const Hand typed = wall.hang == Hang::LeftToRight ? Hand::LeftToRight : Hand::RightToLeft;
  const bool ruleSpeaks = ruled.reason != HandReason::Default;
  return {typed, HandReason::Typed, ruleSpeaks && ruled.hand != typed};
}

}  // namespace ribwright
