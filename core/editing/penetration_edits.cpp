#include "core/editing/penetration_edits.h"

#include <algorithm>
#include <utility>

#include "core/editing/anchor_places.h"
#include "core/editing/held_edit.h"
#include "core/editing/next_ids.h"
#include "core/editing/wall_items.h"

namespace ribwright {
namespace {

constexpr std::string_view kPenetrations = "penetrations";

bool isRound(const Penetration& penetration) { return penetration.shape == Penetration::Shape::Round; }

// How much more the diameter is when this edge of a round one is taken there: twice the way outward. At a corner the
// greater way of the two.
Length grownBy(const FaceBox& box, BoxEdge edge, const FacePoint& to) {
  const Length across = edge.across < 0 ? box.left - to.u : to.u - box.right;
  const Length up = edge.up < 0 ? box.bottom - to.z : to.z - box.top;
  if (edge.across == 0) return edge.up == 0 ? Length() : up * 2;
  return (edge.up == 0 ? across : std::max(across, up)) * 2;
}

Penetration roundGrown(Penetration penetration, Length by) {
  penetration.width += by;
  penetration.height = penetration.width;
  return penetration;
}

Outcome<Penetration> setTo(const Job& job, const Wall& wall, Penetration penetration, const FaceBox& box) {
  penetration.width = box.right - box.left;
  penetration.height = box.top - box.bottom;
  penetration.centre = box.bottom + half(penetration.height);
  const auto place = anchoredAt(job, wall, penetration.place, box.left + half(penetration.width));
  if (!place) return place.faults();
  penetration.place = place.value();
  return penetration;
}

Outcome<Job> replaced(const Job& job, std::size_t wall, const Outcome<Penetration>& edited) {
  if (!edited) return edited.faults();
  const Penetration& one = edited.value();
  if (one.width <= Length() || one.height <= Length())
    return Fault{itemPlace(job.walls.at(wall), kPenetrations, one.id), "would have no size; keep its edges apart"};
  return editedWall(job, wall, [&](Wall& on) { *itemToEdit(on.penetrations, one.id) = one; });
}

}  // namespace

Outcome<FaceBox> penetrationBox(const Job& job, const Wall& wall, const Penetration& penetration) {
  const auto centre = anchoredPlace(job, wall, penetration.place);
  if (!centre) return centre.faults();
  const Length left = centre.value() - half(penetration.width);
  const Length bottom = penetration.centre - half(penetration.height);
  return FaceBox{left, left + penetration.width, bottom, bottom + penetration.height};
}

Outcome<Penetration> drawnPenetration(const Job& job, std::size_t wall, Penetration::Shape shape, FacePoint a,
                                      FacePoint b) {
  Penetration penetration;
  penetration.id = nextPenetrationId(job);
  penetration.shape = shape;
  penetration.width = absolute(a.u - b.u);
  penetration.height = absolute(a.z - b.z);
  if (isRound(penetration)) penetration.width = penetration.height = std::max(penetration.width, penetration.height);
  const Wall& on = job.walls.at(wall);
  if (penetration.width <= Length() || penetration.height <= Length())
    return Fault{itemPlace(on, kPenetrations, penetration.id),
                 "would have no size; draw it from one corner to the other"};
  penetration.place = anchorNear(on, std::min(a.u, b.u) + half(absolute(a.u - b.u)));
  penetration.centre = std::min(a.z, b.z) + half(absolute(a.z - b.z));
  return penetration;
}

Outcome<Job> addPenetration(const Job& job, std::size_t wall, Penetration penetration) {
  if (penetration.id.empty()) penetration.id = nextPenetrationId(job);
  return editedWall(job, wall, [&](Wall& on) { on.penetrations.push_back(std::move(penetration)); });
}

Outcome<Job> penetrationMovedTo(const Job& job, std::size_t wall, const std::string& id, FacePoint centre) {
  const Wall& on = job.walls.at(wall);
  const Penetration* penetration = byId(on.penetrations, id);
  if (!penetration) return notThere(on, kPenetrations, id);
  const auto place = anchoredAt(job, on, penetration->place, centre.u);
  if (!place) return place.faults();
  Penetration edited = *penetration;
  edited.place = place.value();
  edited.centre = centre.z;
  return replaced(job, wall, edited);
}

Outcome<Job> penetrationEdgeMovedTo(const Job& job, std::size_t wall, const std::string& id, BoxEdge edge,
                                    FacePoint to) {
  const Wall& on = job.walls.at(wall);
  const Penetration* penetration = byId(on.penetrations, id);
  if (!penetration) return notThere(on, kPenetrations, id);
  const auto box = penetrationBox(job, on, *penetration);
  if (!box) return box.faults();
  if (isRound(*penetration)) return replaced(job, wall, roundGrown(*penetration, grownBy(box.value(), edge, to)));
  return replaced(job, wall, setTo(job, on, *penetration, withEdgeAt(box.value(), edge, to)));
}

Outcome<Job> penetrationRemoved(const Job& job, std::size_t wall, const std::string& id) {
  if (!byId(job.walls.at(wall).penetrations, id)) return notThere(job.walls.at(wall), kPenetrations, id);
  return editedWall(job, wall, [&](Wall& on) {
    std::erase_if(on.penetrations, [&](const Penetration& one) { return one.id == id; });
  });
}

}  // namespace ribwright
