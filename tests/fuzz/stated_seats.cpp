#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

struct Corner {
  Nm x, y;
};

// Twice the area of the triangle; 0 where b is no corner.
Int128 turnAt(const Corner& a, const Corner& b, const Corner& c) {
  return (Int128(b.x) - a.x) * (Int128(c.y) - a.y) - (Int128(c.x) - a.x) * (Int128(b.y) - a.y);
}

std::vector<Corner> cornersOf(const Profile& profile) {
  std::vector<Corner> corners;
  for (const SectionPoint& point : profile.section) {
    const Corner corner{point.x.nanometres(), point.y.nanometres()};
    if (!corners.empty() && corners.back().x == corner.x && corners.back().y == corner.y) continue;
    while (corners.size() > 1 && turnAt(corners[corners.size() - 2], corners.back(), corner) == 0) corners.pop_back();
    corners.push_back(corner);
  }
  return corners;
}

// A level chord and this one turn by 15 degrees or more: rise / run >= tan 15 = 2 - sqrt 3.
bool isBend(const Corner& a, const Corner& b) {
  const Int128 run = Int128(b.x) - a.x, rise = b.y > a.y ? Int128(b.y) - a.y : Int128(a.y) - b.y;
  const Int128 rest = 2 * run - rise;
  return rest <= 0 || rest * rest <= 3 * run * run;
}

// Level at y; at bends they are shortened.
Spans levelAt(const std::vector<Corner>& corners, Nm y, Nm fromBend) {
  Spans flats;
  for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
    if (corners[i].y != y || corners[i + 1].y != y) continue;
    Span flat{corners[i].x, corners[i + 1].x};
    if (i > 0 && isBend(corners[i - 1], corners[i])) flat.from += fromBend;
    if (i + 2 < corners.size() && isBend(corners[i + 1], corners[i + 2])) flat.to -= fromBend;
    if (flat.from <= flat.to) flats.push_back(flat);
  }
  return flats;
}

}  // namespace

Spans statedSeats(const Profile& profile, Nm washer) {
  const Nm radius = washer - washer / 2;
  return levelAt(cornersOf(profile), 0, radius + Length::inches(0, 4).nanometres());
}

Spans statedCrowns(const Profile& profile) {
  const std::vector<Corner> corners = cornersOf(profile);
  Nm depth = 0;
  for (const Corner& corner : corners) depth = std::max(depth, corner.y);
  return depth == 0 ? Spans() : levelAt(corners, depth, 0);
}

}  // namespace ribwright::fuzz
