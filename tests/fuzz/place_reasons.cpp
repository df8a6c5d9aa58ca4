#include "tests/fuzz/place_reasons.h"

#include <cmath>

#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

// The smallest whole upright distance that is at least `margin` square to the slope.
Nm uprightMargin(const Segment& s, Nm margin) {
  const Int128 run = Int128(s.u1) - s.u0, rise = Int128(s.z1) - s.z0;
  const long double slope = static_cast<long double>(s.z1 - s.z0) / static_cast<long double>(s.u1 - s.u0);
  const auto guess = static_cast<Nm>(static_cast<long double>(margin) * std::sqrt(1 + slope * slope));
  const Int128 square = Int128(margin) * margin;
  const auto enough = [&](Int128 upright) { return (upright * upright - square) * run * run >= square * rise * rise; };
  Nm upright = guess > 2 ? guess - 2 : 0;
  while (!enough(upright)) ++upright;
  return upright;
}

}  // namespace

std::optional<Refusal::Why> PlaceReasons::refused(const AskedPlace& place, const std::vector<int>& through) {
  const ScrewedRun& run = wall_.runs[static_cast<std::size_t>(place.run)];
  if (run.metal.nearEdge(place.u, place.z, wall_.fromEdge(place.screw))) return Refusal::Why::NearEdge;
  if (through.size() > Hole::kMostSheets) return Refusal::Why::TooManySheets;
  const bool stitch = place.kind == HoleKind::Stitch;
  const Spans& seats = seatsOf(run, stitch ? -1 : place.screw);
  for (const int index : through) {
    const ScrewedModule& module = run.modules[static_cast<std::size_t>(wall_.piece(index).module)];
    if (!holds(seats, run.along.t(place.u) - module.line))
      return stitch ? Refusal::Why::NoCrown : Refusal::Why::OffFlat;
  }
  if (!stitch && place.kind != HoleKind::Jamb && offSteel(place)) return Refusal::Why::OffScrewFace;
  return std::nullopt;
}

const Spans& PlaceReasons::seatsOf(const ScrewedRun& run, int screw) {
  const auto [seats, fresh] = seats_.try_emplace({run.profile, screw});
  if (fresh) {
    seats->second = screw < 0 ? statedCrowns(*run.profile) : statedSeats(*run.profile, nm(wall_.screw(screw).washer));
  }
  return seats->second;
}

bool PlaceReasons::offSteel(const AskedPlace& place) const {
  const SupportRow& row = wall_.holes.supports.rows[static_cast<std::size_t>(place.row)];
  const Stretch& s = row.stretches[static_cast<std::size_t>(place.stretch)];
  const Nm margin = wall_.margin(place.screw), low = nm(s.low), high = nm(s.high);
  if (s.endsAtFrom && place.u < nm(s.from) + margin) return true;
  if (s.endsAtTo && place.u > nm(s.to) - margin) return true;
  if (s.steel != Stretch::Steel::Own) return place.u < low + margin || place.u > high - margin;
  if (row.alongTop) {
    const Nm upright = uprightMargin(wall_.steelOver(s, place.u), margin);
    return nm(s.row) < low + upright || nm(s.row) > high - upright;
  }
  return s.known && (place.z < low + margin || place.z > high - margin);
}

}  // namespace ribwright::fuzz
