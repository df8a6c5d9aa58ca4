#include "core/editing/opening_edits.h"

#include <algorithm>
#include <utility>

#include "core/editing/anchor_places.h"
#include "core/editing/held_edit.h"
#include "core/editing/next_ids.h"
#include "core/editing/wall_items.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

constexpr std::string_view kOpenings = "openings";

// Highest concrete under a door: its threshold clears every step.
Outcome<Length> floorUnder(const Job& job, const Wall& wall, Length left, Length right) {
  const auto face = wallFace(job, wall);
  if (!face) return face.faults();
  return face.value().concrete.highest(left, right);
}

Outcome<Anchor> anchoredAround(const Job& job, const Wall& wall, const Anchor& stated, const FaceBox& box) {
  return anchoredAt(job, wall, stated, anchoredEdge(stated, box.right - box.left, box.left));
}

}  // namespace

Outcome<FaceBox> openingBox(const Job& job, const Wall& wall, const Opening& opening) {
  const auto named = anchoredPlace(job, wall, opening.place);
  if (!named) return named.faults();
  const Length left = leftOf(opening.place, opening.width, named.value());
  return FaceBox{left, left + opening.width, opening.sill, opening.sill + opening.height};
}

Outcome<Opening> drawnOpening(const Job& job, std::size_t wall, Opening::Kind kind, FacePoint a, FacePoint b) {
  const Wall& on = job.walls.at(wall);
  FaceBox box{std::min(a.u, b.u), std::max(a.u, b.u), std::min(a.z, b.z), std::max(a.z, b.z)};
  if (isDoor(kind)) {
    const auto floor = floorUnder(job, on, box.left, box.right);
    if (!floor) return floor.faults();
    box.bottom = floor.value();
  }
  Opening opening;
  opening.id = nextOpeningId(job, kind);
  if (auto faults = faultsOfBox(box, itemPlace(on, kOpenings, opening.id)); !faults.empty()) return faults;
  opening.kind = kind;
  opening.place = anchorNear(on, box.left);
  opening.width = box.right - box.left;
  opening.height = box.top - box.bottom;
  opening.sill = box.bottom;
  return opening;
}

Outcome<Job> addOpening(const Job& job, std::size_t wall, Opening opening) {
  if (opening.id.empty()) opening.id = nextOpeningId(job, opening.kind);
  return editedWall(job, wall, [&](Wall& on) { on.openings.push_back(std::move(opening)); });
}

Outcome<Job> openingMovedTo(const Job& job, std::size_t wall, const std::string& id, Length leftJamb, Length sill) {
  const Opening* opening = byId(job.walls.at(wall).openings, id);
  if (!opening) return notThere(job.walls.at(wall), kOpenings, id);
  return openingSetTo(job, wall, id, {leftJamb, leftJamb + opening->width, sill, sill + opening->height});
}

Outcome<Job> openingSetTo(const Job& job, std::size_t wall, const std::string& id, const FaceBox& box) {
  const Wall& on = job.walls.at(wall);
  const Opening* opening = byId(on.openings, id);
  if (!opening) return notThere(on, kOpenings, id);
  if (auto faults = faultsOfBox(box, itemPlace(on, kOpenings, id)); !faults.empty()) return faults;
  const auto place = anchoredAround(job, on, opening->place, box);
  if (!place) return place.faults();
  Opening edited = *opening;
  edited.width = box.right - box.left;
  edited.height = box.top - box.bottom;
  edited.sill = box.bottom;
  edited.place = place.value();
  return editedWall(job, wall, [&](Wall& next) { *itemToEdit(next.openings, id) = edited; });
}

Outcome<Job> openingEdgeMovedTo(const Job& job, std::size_t wall, const std::string& id, BoxEdge edge, FacePoint to) {
  const Wall& on = job.walls.at(wall);
  const Opening* opening = byId(on.openings, id);
  if (!opening) return notThere(on, kOpenings, id);
  const auto box = openingBox(job, on, *opening);
  if (!box) return box.faults();
  return openingSetTo(job, wall, id, withEdgeAt(box.value(), edge, to));
}

Outcome<Job> openingRemoved(const Job& job, std::size_t wall, const std::string& id) {
  if (!byId(job.walls.at(wall).openings, id)) return notThere(job.walls.at(wall), kOpenings, id);
  return editedWall(job, wall,
                    [&](Wall& on) { std::erase_if(on.openings, [&](const Opening& one) { return one.id == id; }); });
}

}  // namespace ribwright
