#include "core/editing/wall_things.h"

#include <algorithm>
#include <utility>

#include "core/editing/held_edit.h"
#include "core/editing/next_ids.h"
#include "core/editing/wall_items.h"
#include "core/editing/wall_parts.h"

namespace ribwright {
namespace {

template <class Item>
std::vector<Item> chosen(const std::vector<Item>& items, const std::vector<Part>& parts, const std::string& letter,
                         Part::Kind kind) {
  std::vector<Item> taken;
  for (const Item& item : items) {
    const bool is = std::any_of(parts.begin(), parts.end(), [&](const Part& part) {
      return part.kind == kind && part.wall == letter && part.id == item.id;
    });
    if (is) taken.push_back(item);
  }
  return taken;
}

bool isThere(const Wall& wall, const Part& part) {
  if (part.kind == Part::Kind::Opening) return byId(wall.openings, part.id);
  if (part.kind == Part::Kind::Penetration) return byId(wall.penetrations, part.id);
  return part.kind == Part::Kind::Girt && byId(wall.girts, part.id);
}

template <class Item, class NextId>
void put(MadeParts& made, std::size_t wall, std::vector<Item> Wall::*list, Part::Kind kind, std::vector<Item> items,
         const NextId& nextId) {
  for (Item& item : items) {
    item.id = nextId(made.job, item);
    made.parts.push_back({kind, made.job.walls[wall].letter, item.id});
    (made.job.walls[wall].*list).push_back(std::move(item));
  }
}

}  // namespace

Outcome<WallThings> thingsOf(const Wall& wall, const std::vector<Part>& parts) {
  std::vector<Fault> faults;
  for (const Part& part : parts) {
    if (part.wall == wall.letter && !isThere(wall, part)) faults.push_back(cannotEdit(part));
  }
  if (!faults.empty()) return faults;
  return WallThings{chosen(wall.openings, parts, wall.letter, Part::Kind::Opening),
                    chosen(wall.penetrations, parts, wall.letter, Part::Kind::Penetration),
                    chosen(wall.girts, parts, wall.letter, Part::Kind::Girt)};
}

Outcome<MadeParts> withThings(const Job& job, std::size_t wall, WallThings things) {
  MadeParts made{job, {}};
  put(made, wall, &Wall::openings, Part::Kind::Opening, std::move(things.openings), nextOpeningIdLike);
  put(made, wall, &Wall::penetrations, Part::Kind::Penetration, std::move(things.penetrations),
      [](const Job& in, const Penetration&) { return nextPenetrationId(in); });
  put(made, wall, &Wall::girts, Part::Kind::Girt, std::move(things.girts),
      [wall](const Job& in, const Girt&) { return nextGirtId(in, wall); });
  auto held = ifWallHeld(std::move(made.job), wall);
  if (!held) return held.faults();
  return MadeParts{std::move(held).value(), std::move(made.parts)};
}

Anchor movedAlong(Anchor anchor, Length du) {
  anchor.distance += anchor.from == Anchor::From::RightCorner ? -du : du;
  return anchor;
}

WallThings movedBy(WallThings things, const FacePoint& by) {
  for (Opening& opening : things.openings) {
    opening.place = movedAlong(opening.place, by.u);
    opening.sill += by.z;
  }
  for (Penetration& penetration : things.penetrations) {
    penetration.place = movedAlong(penetration.place, by.u);
    penetration.centre += by.z;
  }
  for (Girt& girt : things.girts) {
    girt.height += by.z;
    if (girt.from) *girt.from += by.u;
    if (girt.to) *girt.to += by.u;
  }
  return things;
}

std::optional<std::size_t> indexOfWall(const Job& job, const std::string& letter) {
  const Wall* wall = byLetter(job.walls, letter);
  if (!wall) return std::nullopt;
  return static_cast<std::size_t>(wall - job.walls.data());
}

Fault cannotEdit(const Part& part) {
  const std::string place = joined("walls.", part.wall, ".", part.id);
  switch (part.kind) {
    case Part::Kind::Face:
      return {joined("walls.", part.wall), "is a whole wall; choose what stands on it"};
    case Part::Kind::Piece:
    case Part::Kind::Screw:
    case Part::Kind::Batch:
      return {place,
              "follows from the wall's layout; edit what it follows from: openings, girts, the start of the run"};
    case Part::Kind::Column:
      return {place, "is a column; columns are moved, added and deleted, and not copied"};
    case Part::Kind::Opening:
    case Part::Kind::Penetration:
    case Part::Kind::Girt:
      break;
  }
  return {place, "is not there; choose one that stands on the wall"};
}

}  // namespace ribwright
