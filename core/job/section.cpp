#include "core/job/section.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace ribwright {
namespace {

using Points = std::vector<SectionPoint>;

bool onStraightSide(const SectionPoint& a, const SectionPoint& b, const SectionPoint& c) {
  const auto product = [](Length p, Length q) { return Int128(p.nanometres()) * q.nanometres(); };
  // A turn back on itself is a bend although its three points are in line.
  const bool straightOn = product(b.x - a.x, c.x - b.x) + product(b.y - a.y, c.y - b.y) > 0;
  return straightOn && product(b.x - a.x, c.y - b.y) == product(b.y - a.y, c.x - b.x);
}

Points mirrored(const Points& points, Length edges) {
  Points mirror;
  mirror.reserve(points.size());
  for (auto point = points.rbegin(); point != points.rend(); ++point) mirror.push_back({edges - point->x, point->y});
  return mirror;
}

// A run of points off the pan, with the point on the pan before it and after it where the sheet goes on there.
std::vector<Rib> ribsOf(const Points& points) {
  std::vector<Rib> ribs;
  for (std::size_t i = 0; i < points.size();) {
    if (points[i].y <= Length()) {
      ++i;
      continue;
    }
    Rib rib{points[i > 0 ? i - 1 : i].x, Length(), points[i].y};
    for (; i < points.size() && points[i].y > Length(); ++i) rib.height = std::max(rib.height, points[i].y);
    rib.to = points[i < points.size() ? i : i - 1].x;
    if (rib.from < rib.to) ribs.push_back(rib);
  }
  return ribs;
}

std::vector<Flat> flatsAt(const Points& points, Length height) {
  std::vector<Flat> flats;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const auto &a = points[i - 1], &b = points[i];
    if (a.y == height && b.y == height && a.x < b.x) flats.push_back({a.x, b.x});
  }
  return flats;
}

double lengthOf(const Points& points) {
  double sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const double dx = (points[i].x - points[i - 1].x).inMillimetres();
    const double dy = (points[i].y - points[i - 1].y).inMillimetres();
    sum += std::sqrt(dx * dx + dy * dy);  // rounded alike on every machine, which std::hypot is not
  }
  return sum;
}

std::optional<Rib> ownRibAt(const std::vector<Rib>& ribs, Length x) {
  const auto rib = std::find_if(ribs.begin(), ribs.end(), [&](const Rib& r) { return r.from <= x && x <= r.to; });
  if (rib == ribs.end()) return std::nullopt;
  return *rib;
}

}  // namespace

std::vector<SectionPoint> bends(const std::vector<SectionPoint>& section) {
  Points kept;
  for (const SectionPoint& point : section) {
    if (!kept.empty() && kept.back() == point) continue;
    while (kept.size() >= 2 && onStraightSide(kept[kept.size() - 2], kept.back(), point)) kept.pop_back();
    kept.push_back(point);
  }
  return kept;
}

Section sectionOf(const Profile& profile) {
  Section section;
  section.cover = profile.cover;
  section.metalWidth = profile.metalWidth();
  const Points points = bends(profile.section);
  if (points.size() < 2) return section;
  for (const SectionPoint& point : points) section.depth = std::max(section.depth, point.y);
  section.ribs = ribsOf(points);
  if (section.depth > Length()) section.crownFlats = flatsAt(points, section.depth);
  section.panFlats = flatsAt(points, Length());
  section.developedWidth = lengthOf(points);
  section.turnable = mirrored(points, points.front().x + points.back().x) == points;
  return section;
}

std::optional<Rib> ribAt(const Section& section, Length x) {
  const Length module = section.cover * wholeTimes(x, section.cover);
  std::optional<Rib> covering;
  // The module's own sheet, the leg of the one before, the lip of the one after: where two of them nest it is one rib.
  for (const Length sheet : {module, module - section.cover, module + section.cover}) {
    const auto rib = ownRibAt(section.ribs, x - sheet);
    if (!rib) continue;
    const Rib placed{rib->from + sheet, rib->to + sheet, rib->height};
    if (!covering) covering = placed;
    covering = Rib{std::min(covering->from, placed.from), std::max(covering->to, placed.to),
                   std::max(covering->height, placed.height)};
  }
  return covering;
}

Profile lappedBy(const Profile& profile, Length more) {
  Profile wider = profile;
  wider.cover -= more;
  wider.over += more;
  for (SectionPoint& point : wider.section) point.x -= more;
  if (more < Length() || wider.cover <= wider.over + wider.under) {
    throw std::invalid_argument("a side lap wider than the sheet allows");
  }
  return wider;
}

}  // namespace ribwright
