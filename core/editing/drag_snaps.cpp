#include "core/editing/drag_snaps.h"

#include <algorithm>

#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

void addAnchoredFrom(const Wall& wall, int column, std::vector<std::string>& ids) {
  const auto add = [&](const Anchor& anchor, const std::string& id) {
    if (anchor.from == Anchor::From::Column && anchor.column == column) ids.push_back(id);
  };
  for (const Opening& opening : wall.openings) add(opening.place, opening.id);
  for (const Penetration& penetration : wall.penetrations) add(penetration.place, penetration.id);
}

bool isBesideColumn(const SnapCandidate& candidate, std::size_t column) {
  const auto middleOf = [&](std::size_t bay) {
    return candidate.name == Phrase{"name.bay-middle", {{"number", static_cast<std::int64_t>(bay)}}};
  };
  return middleOf(column) || (column > 0 && middleOf(column - 1));
}

bool isAt(const SnapCandidate& candidate, SnapCandidate::Kind kind, Axis axis, Length at) {
  return candidate.kind == kind && candidate.axis == axis && candidate.at == at;
}

bool goesAlong(const SnapCandidate& candidate, const Grip& grip) {
  switch (grip.kind) {
    case Grip::Kind::Column:
      return isBesideColumn(candidate, grip.index);
    case Grip::Kind::TopPoint:
    case Grip::Kind::BaseStep:
      return isAt(candidate, SnapCandidate::Kind::Corner, Axis::Z, grip.at.z);
    case Grip::Kind::ModuleLine:
      return candidate.kind == SnapCandidate::Kind::ModuleLine;
    case Grip::Kind::Band:
      return isAt(candidate, SnapCandidate::Kind::Joint, Axis::Z, grip.at.z);
    case Grip::Kind::Joint:
      return isAt(candidate, SnapCandidate::Kind::Joint, Axis::U, grip.at.u);
    case Grip::Kind::Opening:
    case Grip::Kind::OpeningEdge:
    case Grip::Kind::Penetration:
    case Grip::Kind::PenetrationEdge:
    case Grip::Kind::Girt:
    case Grip::Kind::GirtEnd:
      break;
  }
  return false;
}

std::optional<FaceBox> wholeBox(const Job& job, const Wall& wall, const Grip& grip) {
  const Opening* opening = grip.kind == Grip::Kind::Opening ? byId(wall.openings, grip.id) : nullptr;
  const Penetration* penetration = grip.kind == Grip::Kind::Penetration ? byId(wall.penetrations, grip.id) : nullptr;
  if (!opening && !penetration) return std::nullopt;
  const auto box = opening ? openingBox(job, wall, *opening) : penetrationBox(job, wall, *penetration);
  return box ? std::optional(box.value()) : std::nullopt;
}

// Where the grip's thing can snap, before it is taken anywhere: to things, and to whole units.
struct Places {
  std::vector<Length> toThings;
  Length toUnits;
};

Places placesOf(const Job& job, const Wall& wall, const Grip& grip, Axis axis) {
  const Length at = axis == Axis::U ? grip.at.u : grip.at.z;
  if (const auto box = wholeBox(job, wall, grip)) {
    const Length low = axis == Axis::U ? box->left : box->bottom, high = axis == Axis::U ? box->right : box->top;
    return {{low, high, at}, low};
  }
  const Girt* girt = grip.kind == Grip::Kind::Girt ? byId(wall.girts, grip.id) : nullptr;
  return {{at}, girt ? girt->height : at};
}

std::optional<Snap> snapped(Axis axis, Places places, Length by, const std::vector<SnapCandidate>& candidates,
                            Length reach, Length unit, const LengthStyle& style) {
  for (Length& place : places.toThings) place += by;
  if (auto thing = snapAny(axis, places.toThings, candidates, reach, Length(), style)) return thing;
  return snap(axis, places.toUnits + by, {}, reach, unit, style);
}

}  // namespace

std::vector<SnapCandidate> snapCandidatesFor(const Job& job, const Plan& plan, std::size_t wall, const Grip& grip,
                                             const std::vector<std::string>& alsoLeftOut) {
  std::vector<std::string> ids = alsoLeftOut;
  if (!grip.id.empty()) ids.push_back(grip.id);
  if (grip.kind == Grip::Kind::Column) {
    ids.push_back(std::to_string(grip.index));
    addAnchoredFrom(job.walls.at(wall), static_cast<int>(grip.index), ids);
  }
  std::vector<SnapCandidate> candidates = snapCandidates(job, plan, wall, ids);
  std::erase_if(candidates, [&](const SnapCandidate& one) { return goesAlong(one, grip); });
  return candidates;
}

SnappedDrag snappedDrag(const Job& job, std::size_t wall, const Grip& grip, FacePoint to,
                        const std::vector<SnapCandidate>& candidates, Length reach, Length unit,
                        const LengthStyle& style) {
  const Wall& on = job.walls.at(wall);
  SnappedDrag drag{to, std::nullopt, std::nullopt};
  const auto along = [&](Axis axis, Length by) {
    return snapped(axis, placesOf(job, on, grip, axis), by, candidates, reach, unit, style);
  };
  if (grip.alongU) drag.across = along(Axis::U, to.u - grip.at.u);
  if (grip.alongZ) drag.up = along(Axis::Z, to.z - grip.at.z);
  if (drag.across) drag.to.u += drag.across->by;
  if (drag.up) drag.to.z += drag.up->by;
  return drag;
}

}  // namespace ribwright
