// A grip taken to another place, and what that is called.
#include "core/editing/girt_edits.h"
#include "core/editing/grips.h"
#include "core/editing/opening_edits.h"
#include "core/editing/outline_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "core/editing/run_edits.h"
#include "core/editing/wall_items.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

// How far it is taken the ways that it can be.
FacePoint taken(const Grip& grip, const FacePoint& to) {
  return {grip.alongU ? to.u - grip.at.u : Length(), grip.alongZ ? to.z - grip.at.z : Length()};
}

FacePoint sum(const FacePoint& a, const FacePoint& b) { return {a.u + b.u, a.z + b.z}; }

Outcome<Job> draggedOpening(const Job& job, std::size_t wall, const Grip& grip, const FacePoint& by) {
  const Wall& on = job.walls.at(wall);
  const Opening* opening = byId(on.openings, grip.id);
  if (!opening) return notThere(on, "openings", grip.id);
  const auto box = openingBox(job, on, *opening);
  if (!box) return box.faults();
  return openingMovedTo(job, wall, grip.id, box.value().left + by.u, box.value().bottom + by.z);
}

Outcome<Job> draggedPenetration(const Job& job, std::size_t wall, const Grip& grip, const FacePoint& by) {
  const Wall& on = job.walls.at(wall);
  const Penetration* penetration = byId(on.penetrations, grip.id);
  if (!penetration) return notThere(on, "penetrations", grip.id);
  const auto box = penetrationBox(job, on, *penetration);
  if (!box) return box.faults();
  const Length u = box.value().left + half(penetration->width);
  return penetrationMovedTo(job, wall, grip.id, {u + by.u, penetration->centre + by.z});
}

Outcome<Job> draggedGirt(const Job& job, std::size_t wall, const Grip& grip, const FacePoint& by) {
  const Wall& on = job.walls.at(wall);
  const Girt* girt = byId(on.girts, grip.id);
  if (!girt) return notThere(on, "girts", grip.id);
  return girtMovedTo(job, wall, grip.id, girt->height + by.z);
}

bool isAtItsCorner(const Plan& plan, std::size_t wall, const Grip& grip, Length u) {
  return u == (grip.edge.across < 0 ? Length() : plan.walls.at(wall)->layout.face.width);
}

Outcome<Job> draggedEnd(const Job& job, const Plan& plan, std::size_t wall, const Grip& grip, Length u) {
  const GirtEnd end = grip.edge.across < 0 ? GirtEnd::Left : GirtEnd::Right;
  const bool on = isAtItsCorner(plan, wall, grip, u);
  return girtEndMovedTo(job, wall, grip.id, end, on ? std::nullopt : std::optional<Length>(u));
}

}  // namespace

Outcome<Job> dragged(const Job& job, const Plan& plan, std::size_t wall, const Grip& grip, FacePoint to,
                     Anchored anchored) {
  const FacePoint by = taken(grip, to), at = sum(grip.at, by);
  if (by == FacePoint{}) return job;
  switch (grip.kind) {
    case Grip::Kind::Opening:
      return draggedOpening(job, wall, grip, by);
    case Grip::Kind::OpeningEdge:
      return openingEdgeMovedTo(job, wall, grip.id, grip.edge, at);
    case Grip::Kind::Penetration:
      return draggedPenetration(job, wall, grip, by);
    case Grip::Kind::PenetrationEdge:
      return penetrationEdgeMovedTo(job, wall, grip.id, grip.edge, at);
    case Grip::Kind::Girt:
      return draggedGirt(job, wall, grip, by);
    case Grip::Kind::GirtEnd:
      return draggedEnd(job, plan, wall, grip, at.u);
    case Grip::Kind::Column:
      return columnMovedTo(job, wall, static_cast<int>(grip.index), at.u, anchored);
    case Grip::Kind::TopPoint:
      return topPointMovedTo(job, wall, grip.index, at);
    case Grip::Kind::BaseStep:
      return baseStepMovedTo(job, wall, grip.index, at);
    case Grip::Kind::ModuleLine:
      return moduleLineMovedTo(job, plan, wall, grip.index, at.u);
    case Grip::Kind::Band:
      return bandLimitMovedTo(job, wall, grip.index, at.z);
    case Grip::Kind::Joint:
      return jointMovedTo(job, wall, grip.index, at.u);
  }
  return job;
}

}  // namespace ribwright
