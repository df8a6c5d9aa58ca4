#include "core/editing/snaps.h"

#include <tuple>

namespace ribwright {
namespace {

constexpr std::int64_t unitsInReach = 4;

SnapCandidate wholeAt(Axis axis, Length at, Length unit, const LengthStyle& style) {
  const Length whole = roundTo(at, unit);
  return {SnapCandidate::Kind::WholeUnit, axis, whole, {"", {{"at", fineText(whole, style)}}}, ""};
}

// What is lower wins.
auto rank(const Snap& snap) { return std::tuple(snap.to.kind, absolute(snap.by), snap.to.at, snap.place); }

void take(std::optional<Snap>& best, std::size_t place, Length at, const SnapCandidate& candidate, Length reach) {
  const Snap snap{place, candidate.at, candidate.at - at, candidate};
  if (absolute(snap.by) > reach) return;
  if (!best || rank(snap) < rank(*best)) best = snap;
}

}  // namespace

Length wholeUnit(UnitSystem units, Length reach) {
  const bool metric = units == UnitSystem::Millimetres;
  const Length fine = metric ? Length::millimetres(10) : Length::inches(1);
  const Length coarse = metric ? Length::millimetres(100) : Length::feet(1);
  return fine >= reach * unitsInReach ? fine : coarse;
}

std::optional<Snap> snap(Axis axis, Length at, const std::vector<SnapCandidate>& candidates, Length reach, Length unit,
                         const LengthStyle& style) {
  return snapAny(axis, {at}, candidates, reach, unit, style);
}

std::optional<Snap> snapAny(Axis axis, const std::vector<Length>& places, const std::vector<SnapCandidate>& candidates,
                            Length reach, Length unit, const LengthStyle& style) {
  std::optional<Snap> best;
  for (std::size_t place = 0; place < places.size(); ++place) {
    for (const SnapCandidate& candidate : candidates) {
      if (candidate.axis == axis) take(best, place, places[place], candidate, reach);
    }
    if (unit > Length()) take(best, place, places[place], wholeAt(axis, places[place], unit, style), reach);
  }
  return best;
}

}  // namespace ribwright
