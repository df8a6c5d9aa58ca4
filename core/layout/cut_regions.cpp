#include "core/layout/cut_regions.h"

#include <algorithm>

#include "core/units/angle.h"

namespace ribwright {

namespace {

HeightLine levelBetween(Length left, Length right, Length z) { return HeightLine({{left, z}, {right, z}}); }

CutRegion box(std::string id, Length left, Length right, Length bottom, Length top) {
  CutRegion cut;
  cut.id = std::move(id);
  cut.left = left;
  cut.right = right;
  cut.bottom = bottom;
  cut.top = top;
  cut.lower = levelBetween(left, right, bottom);
  cut.upper = levelBetween(left, right, top);
  return cut;
}

CutRegion ofOpening(const Settings& settings, const Opening& opening, Length left, const WallFace& face) {
  const Length right = left + opening.width, head = opening.sill + opening.height;
  const Length jamb = opening.clearances.jamb.value_or(settings.jambClearance);
  CutRegion cut = box(opening.id, left - jamb, right + jamb,
                      opening.sill - opening.clearances.sill.value_or(settings.sillClearance),
                      head + opening.clearances.head.value_or(settings.headClearance));
  cut.reachesFloor = opening.sill <= face.concrete.highest(left, right);
  cut.steelLeft = left;
  cut.steelRight = right;
  cut.steelBottom = opening.sill;
  cut.steelTop = head;
  return cut;
}

constexpr int kSides = 24;

// One quarter of the 24-gon, right of the top: offsets of its vertices from the centre. Vertices lie at 7.5, 22.5 ...
// degrees from upright, at radius r / cos 7.5, rounded away from the centre.
std::vector<FaceVertex> quarter(Length radius) {
  std::vector<FaceVertex> offsets;
  const Int128 reach = cosineBillionths(Angle{7'500'000});
  for (int i = 0; i < kSides / 4; ++i) {
    const Angle fromTop{7'500'000 + 15'000'000 * i};
    const auto outward = [&](Int128 share) {
      const Int128 above = share * radius.nanometres();
      return Length::nanometres(static_cast<std::int64_t>((above + reach - 1) / reach));
    };
    offsets.push_back({outward(sineBillionths(fromTop)), outward(cosineBillionths(fromTop))});
  }
  return offsets;
}

CutRegion ofRound(const Penetration& penetration, Length centre) {
  const Length radius = half(penetration.width + Length::nanometres(1)) + penetration.clearance;
  const auto offsets = quarter(radius);
  std::vector<FaceVertex> upper, lower;
  for (auto at = offsets.rbegin(); at != offsets.rend(); ++at)
    upper.push_back({centre - at->u, penetration.centre + at->z});
  for (const FaceVertex& at : offsets) upper.push_back({centre + at.u, penetration.centre + at.z});
  for (const FaceVertex& at : upper) lower.push_back({at.u, penetration.centre - (at.z - penetration.centre)});
  CutRegion cut = box(penetration.id, upper.front().u, upper.back().u, penetration.centre - offsets.front().z,
                      penetration.centre + offsets.front().z);
  cut.upper = HeightLine(std::move(upper));
  cut.lower = HeightLine(std::move(lower));
  return cut;
}

CutRegion ofPenetration(const Penetration& penetration, Length centre, Length concrete) {
  const Length gap = penetration.clearance;
  CutRegion cut;
  if (penetration.shape == Penetration::Shape::Round) {
    cut = ofRound(penetration, centre);
    cut.steelLeft = centre - half(penetration.width);
    cut.steelRight = *cut.steelLeft + penetration.width;
    cut.steelBottom = penetration.centre - half(penetration.width);
    cut.steelTop = *cut.steelBottom + penetration.width;
  } else {
    const Length left = centre - half(penetration.width), bottom = penetration.centre - half(penetration.height);
    cut = box(penetration.id, left - gap, left + penetration.width + gap, bottom - gap,
              bottom + penetration.height + gap);
    cut.steelLeft = left;
    cut.steelRight = left + penetration.width;
    cut.steelBottom = bottom;
    cut.steelTop = bottom + penetration.height;
  }
  cut.reachesFloor = *cut.steelBottom <= concrete;  // the sheet is slotted, so that it can be hung over the pipe
  cut.penetration = true;
  cut.round = penetration.shape == Penetration::Shape::Round;
  return cut;
}

}  // namespace

std::vector<CutRegion> cutRegions(const Settings& settings, const Wall& wall, const WallFace& face) {
  std::vector<CutRegion> cuts;
  for (const Opening& opening : wall.openings) {
    if (const auto left = leftJamb(wall, face.width, opening))
      cuts.push_back(ofOpening(settings, opening, *left, face));
  }
  for (const Penetration& penetration : wall.penetrations) {
    if (const auto centre = centreOf(wall, face.width, penetration)) {
      cuts.push_back(ofPenetration(penetration, *centre, face.concrete.highest(*centre, *centre)));
    }
  }
  return cuts;
}

}  // namespace ribwright
