#include "core/editing/copied_parts.h"

#include <algorithm>
#include <utility>

#include "core/editing/anchor_places.h"
#include "core/editing/wall_items.h"
#include "core/editing/wall_things.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

void takeMember(const Job& job, const std::string& id, std::vector<Member>& members) {
  const Member* member = byId(job.members, id);
  if (member && !byId(members, id)) members.push_back(*member);
}

// The wall that they were copied off, as far as their anchors go by it.
Wall wallBefore(const CopiedParts& copied) {
  Wall wall;
  wall.letter = copied.wall;
  wall.width = copied.width;
  wall.columns = copied.columns;
  return wall;
}

// `shift`: from what the anchor names to the left jamb that a new one names.
Outcome<Anchor> anchorOn(const Wall& wall, const CopiedParts& copied, const Anchor& stated, Length shift) {
  if (stated.from != Anchor::From::Column || columnAt(wall.columns, stated.column)) return stated;
  const auto place = anchoredPlace(Job{}, wallBefore(copied), stated);
  if (!place) return place.faults();
  return anchorNear(wall, place.value() + shift);
}

Outcome<WallThings> thingsFor(const Wall& wall, const CopiedParts& copied) {
  WallThings things{copied.openings, copied.penetrations, copied.girts};
  for (Opening& opening : things.openings) {
    const auto place = anchorOn(wall, copied, opening.place, leftOf(opening.place, opening.width, Length()));
    if (!place) return place.faults();
    opening.place = place.value();
  }
  for (Penetration& penetration : things.penetrations) {
    const auto place = anchorOn(wall, copied, penetration.place, Length());
    if (!place) return place.faults();
    penetration.place = place.value();
  }
  return things;
}

std::vector<std::string> namedMembers(const WallThings& things) {
  std::vector<std::string> ids;
  const auto name = [&](const std::string& id) {
    if (!id.empty() && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
  };
  for (const Opening& opening : things.openings) name(opening.frame.member);
  for (const Girt& girt : things.girts) name(girt.member);
  return ids;
}

Outcome<Job> withMembers(Job job, const CopiedParts& copied, const WallThings& things) {
  for (const std::string& id : namedMembers(things)) {
    const Member *known = byId(job.members, id), *brought = byId(copied.members, id);
    if (!known && !brought) return Fault{joined("members.", id), "came not along; copy it in a job that holds it"};
    if (known && brought && *known != *brought)
      return Fault{joined("members.", id), "has another cross-section in this job; give one of the two another name"};
    if (!known) job.members.push_back(*brought);
  }
  return job;
}

}  // namespace

Outcome<CopiedParts> copiedParts(const Job& job, std::size_t wall, const std::vector<Part>& parts) {
  const Wall& on = job.walls.at(wall);
  auto things = thingsOf(on, parts);
  if (!things) return things.faults();
  const auto width = faceWidth(job, on);
  if (!width) return width.faults();
  CopiedParts copied{on.letter, width.value(), on.columns, {}, {}, {}, {}};
  copied.columns.member.clear();
  for (const std::string& id : namedMembers(things.value())) takeMember(job, id, copied.members);
  copied.openings = std::move(things.value().openings);
  copied.penetrations = std::move(things.value().penetrations);
  copied.girts = std::move(things.value().girts);
  if (copied.openings.empty() && copied.penetrations.empty() && copied.girts.empty())
    return Fault{joined("walls.", on.letter), "nothing of what is chosen stands on this wall; choose what to copy"};
  return copied;
}

Outcome<MadeParts> pasted(const Job& job, std::size_t wall, const CopiedParts& copied, FacePoint by) {
  auto things = thingsFor(job.walls.at(wall), copied);
  if (!things) return things.faults();
  const auto whole = withMembers(job, copied, things.value());
  if (!whole) return whole.faults();
  return withThings(whole.value(), wall, movedBy(std::move(things).value(), by));
}

}  // namespace ribwright
