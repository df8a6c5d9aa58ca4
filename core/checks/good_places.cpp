#include "core/checks/good_places.h"

#include <algorithm>

#include "core/fastening/chosen_pattern.h"

namespace ribwright {
namespace {

std::vector<Flat> within(const std::vector<Flat>& flats, Length from, Length to) {
  std::vector<Flat> kept;
  for (const Flat& flat : flats) {
    const Flat cut{std::max(flat.from, from), std::min(flat.to, to)};
    if (cut.from <= cut.to) kept.push_back(cut);
  }
  return kept;
}

// What is flat on this sheet and on the one beside it, whose module line lies `by` away.
std::vector<Flat> nested(const std::vector<Flat>& flats, Length by) {
  std::vector<Flat> both;
  for (const Flat& flat : flats) {
    const auto shared = within(flats, flat.from - by, flat.to - by);
    for (const Flat& part : shared) both.push_back({part.from + by, part.to + by});
  }
  std::sort(both.begin(), both.end(), [](const Flat& a, const Flat& b) { return a.from < b.from; });
  return both;
}

void append(std::vector<Flat>& all, const std::vector<Flat>& more) { all.insert(all.end(), more.begin(), more.end()); }

}  // namespace

std::vector<Flat> goodPlaces(const Profile& profile, const Screw& screw) {
  const auto seats = structuralSeats(profile, screw.washer);
  const Length clear = fromEdge(screw), last = profile.cover - Length::nanometres(1);
  const Length lip = profile.cover - profile.over;  // where the next sheet's metal begins
  std::vector<Flat> places;
  append(places,
         within(nested(seats, -profile.cover), std::max(Length(), clear - profile.over), profile.under - clear));
  append(places, within(seats, std::max(Length(), profile.under + clear), std::min(last, lip - clear)));
  append(places,
         within(nested(seats, profile.cover), lip + clear, std::min(last, profile.cover + profile.under - clear)));
  return places;
}

std::optional<Length> nearestGoodPlace(const std::vector<Flat>& places, Length x, UnitSystem units) {
  const Length step = units == UnitSystem::FeetInches ? Length::inches(0, 4) : Length::millimetres(1);
  std::vector<Flat> whole;
  for (const Flat& place : places) {
    const Flat rounded{roundUp(place.from, step), place.to - rest(place.to, step)};
    whole.push_back(rounded.from <= rounded.to ? rounded : place);
  }
  if (whole.empty()) return std::nullopt;
  return nearestOnSeat(whole, x, whole.front().from, whole.back().to);
}

}  // namespace ribwright
