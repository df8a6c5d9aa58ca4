#include "core/fastening/seats.h"

#include <algorithm>

namespace ribwright {
namespace {

// Does a chord leave the level by 15 degrees or more? tan 15 = 0.267949192431...
bool isBend(const SectionPoint& from, const SectionPoint& to) {
  const Int128 along = (to.x - from.x).nanometres();
  const Int128 rise = (to.y - from.y).nanometres();
  if (along <= 0) return true;
  return (rise < 0 ? -rise : rise) * 1'000'000'000'000 >= along * 267'949'192'431;
}

}  // namespace

std::vector<Flat> structuralSeats(const Profile& profile, Length washer) {
  const std::vector<SectionPoint> points = bends(profile.section);
  const Length clear = washer - half(washer) + kFromBend;
  std::vector<Flat> seats;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const SectionPoint &a = points[i], &b = points[i + 1];
    if (a.y != Length() || b.y != Length() || a.x >= b.x) continue;
    const bool bendBefore = i > 0 && isBend(points[i - 1], a);
    const bool bendAfter = i + 2 < points.size() && isBend(b, points[i + 2]);
    const Flat seat{a.x + (bendBefore ? clear : Length()), b.x - (bendAfter ? clear : Length())};
    if (seat.from <= seat.to) seats.push_back(seat);
  }
  return seats;
}

std::vector<Flat> stitchSeats(const Profile& profile) { return sectionOf(profile).crownFlats; }

bool isOnSeat(const std::vector<Flat>& seats, Length x) {
  return std::any_of(seats.begin(), seats.end(), [x](const Flat& seat) { return seat.from <= x && x <= seat.to; });
}

std::optional<Length> nearestOnSeat(const std::vector<Flat>& seats, Length x, Length from, Length to) {
  std::optional<Length> nearest;
  for (const Flat& seat : seats) {
    const Length low = std::max(seat.from, from), high = std::min(seat.to, to);
    if (low > high) continue;
    const Length here = std::clamp(x, low, high);
    if (!nearest || absolute(here - x) < absolute(*nearest - x)) nearest = here;
  }
  return nearest;
}

}  // namespace ribwright
