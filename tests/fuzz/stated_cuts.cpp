// The trade's rules: what no sheet may cover.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {
namespace {

Nm halfOf(Length length) { return nm(half(length)); }

Nm columnPlace(const Wall& wall, int column) {
  Nm u = nm(wall.columns.offset);
  for (int i = 0; i + 1 < column; ++i) u += nm(wall.columns.bays[static_cast<std::size_t>(i)]);
  return u;
}

StatedCut box(const std::string& id, Nm left, Nm right, Nm bottom, Nm top) {
  StatedCut cut;
  cut.id = id;
  cut.left = left;
  cut.right = right;
  cut.lower = StatedLine::level(bottom);
  cut.upper = StatedLine::level(top);
  return cut;
}

StatedCut cutOf(const Job& job, const Wall& wall, const StatedFace& face, const Opening& opening) {
  const Nm jamb = nm(opening.clearances.jamb.value_or(job.settings.jambClearance));
  const Nm head = nm(opening.clearances.head.value_or(job.settings.headClearance));
  const Nm sill = nm(opening.clearances.sill.value_or(job.settings.sillClearance));
  const Nm left = statedJamb(wall, face.width, opening), right = left + nm(opening.width);
  // The builder of random walls never lets a sill stand between two levels of the concrete below its opening.
  const Nm concrete = face.concrete.heightAt(std::clamp<Nm>((left + right) / 2, 0, face.width), Side::Right);
  const bool floor = nm(opening.sill) <= concrete;
  StatedCut cut = box(opening.id, left - jamb, right + jamb, floor ? kBelowAll : nm(opening.sill) - sill,
                      nm(opening.sill) + nm(opening.height) + head);
  cut.reachesFloor = floor;
  return cut;
}

StatedLine fromFound(const HeightLine& line) {
  StatedLine stated;
  const auto& v = line.vertices();
  for (std::size_t i = 0; i + 1 < v.size(); ++i) {
    if (v[i].u < v[i + 1].u) stated.segments.push_back({nm(v[i].u), nm(v[i].z), nm(v[i + 1].u), nm(v[i + 1].z)});
  }
  if (stated.segments.empty()) return StatedLine::level(nm(v.front().z));
  return stated;
}

// Corners of the outline counter-clockwise from the lower left, without repeats.
std::vector<FaceVertex> outlineOf(const CutRegion& region) {
  std::vector<FaceVertex> corners = region.lower.vertices();
  const auto& upper = region.upper.vertices();
  corners.insert(corners.end(), upper.rbegin(), upper.rend());
  std::vector<FaceVertex> clean;
  for (const FaceVertex& corner : corners) {
    if (clean.empty() || clean.back() != corner) clean.push_back(corner);
  }
  if (clean.size() > 1 && clean.front() == clean.back()) clean.pop_back();
  return clean;
}

// The regular 24-gon about the circle: every corner at radius / cos(7.5 degrees), 15 degrees apart; no side inside the
// circle.
void checkRound(const CutRegion& region, const Penetration& stated, Nm centre, Complaints& complaints) {
  const std::vector<FaceVertex> corners = outlineOf(region);
  if (corners.size() != 24) {
    complaints.add("round penetration " + stated.id + " has " + std::to_string(corners.size()) + " corners, not 24");
    return;
  }
  const double step = std::numbers::pi / 12;
  const double radius = static_cast<double>(nm(stated.width)) / 2 + static_cast<double>(nm(stated.clearance));
  const double outer = radius / std::cos(step / 2);
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const auto x = static_cast<double>(nm(corners[i].u) - centre),
               y = static_cast<double>(nm(corners[i].z - stated.centre));
    const FaceVertex& next = corners[(i + 1) % corners.size()];
    const auto nx = static_cast<double>(nm(next.u) - centre), ny = static_cast<double>(nm(next.z - stated.centre));
    const double turn = std::atan2(x * ny - y * nx, x * nx + y * ny);
    const double inner = std::abs(x * ny - y * nx) / std::hypot(nx - x, ny - y);
    const bool good =
        std::abs(std::hypot(x, y) - outer) <= 1.5 && std::abs(turn - step) * outer <= 3 && inner >= radius - 1.5;
    if (!good) complaints.add("round penetration " + stated.id + ": corner " + std::to_string(i) + " is misplaced");
  }
}

StatedCut cutOf(const StatedFace& face, const Penetration& penetration, Nm centre) {
  const Nm left = centre - halfOf(penetration.width), clear = nm(penetration.clearance);
  const Nm bottom = nm(penetration.centre) - halfOf(penetration.height);
  StatedCut cut = box(penetration.id, left - clear, left + nm(penetration.width) + clear, bottom - clear,
                      bottom + nm(penetration.height) + clear);
  cut.penetration = true;
  cut.reachesFloor = bottom <= face.concrete.heightAt(std::clamp<Nm>(centre, 0, face.width), Side::Right);
  if (cut.reachesFloor) cut.lower = StatedLine::level(kBelowAll);
  return cut;
}

}  // namespace

Nm statedJamb(const Wall& wall, Nm width, const Opening& opening) {
  const Nm away = nm(opening.place.distance), w = nm(opening.width), halfWidth = halfOf(opening.width);
  const bool centre = opening.place.to == Anchor::To::Centre;
  switch (opening.place.from) {
    case Anchor::From::LeftCorner:
      return centre ? away - halfWidth : away;
    case Anchor::From::RightCorner:
      return centre ? width - away - halfWidth : width - away - w;
    case Anchor::From::Column:
      break;
  }
  return columnPlace(wall, opening.place.column) + (centre ? away - halfWidth : away);
}

Nm statedCentre(const Wall& wall, Nm width, const Penetration& penetration) {
  const Nm away = nm(penetration.place.distance);
  if (penetration.place.from == Anchor::From::LeftCorner) return away;
  if (penetration.place.from == Anchor::From::RightCorner) return width - away;
  return columnPlace(wall, penetration.place.column) + away;
}

std::vector<StatedCut> statedCuts(const Job& job, const Wall& wall, const StatedFace& face,
                                  const std::vector<CutRegion>& found, Complaints& complaints) {
  std::vector<StatedCut> cuts;
  for (const Opening& opening : wall.openings) cuts.push_back(cutOf(job, wall, face, opening));
  for (const Penetration& penetration : wall.penetrations) {
    const Nm centre = statedCentre(wall, face.width, penetration);
    cuts.push_back(cutOf(face, penetration, centre));
    if (penetration.shape != Penetration::Shape::Round) continue;
    const auto region = std::find_if(found.begin(), found.end(),
                                     [&](const CutRegion& r) { return r.penetration && r.id == penetration.id; });
    if (region == found.end()) continue;  // said when the lists are compared
    checkRound(*region, penetration, centre, complaints);
    StatedCut& cut = cuts.back();
    cut.straight = false;
    cut.left = nm(region->left);
    cut.right = nm(region->right);
    if (!cut.reachesFloor) cut.lower = fromFound(region->lower);
    cut.upper = fromFound(region->upper);
  }
  return cuts;
}

}  // namespace ribwright::fuzz
