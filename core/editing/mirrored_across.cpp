// Copies on the wall across.
#include "core/editing/anchor_places.h"
#include "core/editing/column_anchors.h"
#include "core/editing/repeat_edits.h"
#include "core/editing/wall_items.h"
#include "core/editing/wall_things.h"
#include "core/layout/wall_face.h"

namespace ribwright {
namespace {

PlanPoint way(const PlanPoint& from, const PlanPoint& to) { return {to.x - from.x, to.y - from.y}; }

bool isRectangle(const std::vector<PlanPoint>& p) {
  if (p.size() != 4 || way(p[0], p[1]) != way(p[3], p[2])) return false;
  const PlanPoint along = way(p[0], p[1]), up = way(p[1], p[2]);
  return Int128(along.x.nanometres()) * up.x.nanometres() + Int128(along.y.nanometres()) * up.y.nanometres() == 0;
}

// 0 ... 3 for A ... D; absent: a free wall.
std::optional<int> edgeOf(const Wall& wall) {
  if (wall.line || wall.width || wall.letter.size() != 1) return std::nullopt;
  const int edge = wall.letter[0] - 'A';
  return edge >= 0 && edge < 4 ? std::optional(edge) : std::nullopt;
}

class Mirror {
 public:
  Mirror(const Job& job, const Wall& from, const Wall& to, Length width)
      : job_(job), from_(from), to_(to), width_(width) {}

  // `thick`: from the left edge to the right one; nothing for what is anchored by its centre.
  Outcome<Anchor> anchor(const Anchor& stated, Length thick) const {
    Anchor across = stated;
    if (stated.from != Anchor::From::Column) {
      const bool left = stated.from == Anchor::From::LeftCorner;
      across.from = left ? Anchor::From::RightCorner : Anchor::From::LeftCorner;
      return across;
    }
    const auto place = anchoredPlace(job_, from_, stated);
    if (!place) return place.faults();
    const bool centre = stated.to == Anchor::To::Centre;
    const Length named = width_ - place.value() - (centre ? Length() : thick);
    if (to_.columns.bays.empty()) {
      across.from = Anchor::From::LeftCorner;
      across.column = 0;
      across.distance = named;
      return across;
    }
    across.column = nearestColumn(to_.columns, width_ - columnAt(from_.columns, stated.column).value());
    across.distance = named - columnAt(to_.columns, across.column).value();
    return across;
  }

  Girt girt(Girt stated) const {
    const auto from = stated.from;
    stated.from = mirrored(stated.to);
    stated.to = mirrored(from);
    return stated;
  }

 private:
  std::optional<Length> mirrored(const std::optional<Length>& u) const {
    return u ? std::optional(width_ - *u) : std::nullopt;
  }

  const Job& job_;
  const Wall& from_;
  const Wall& to_;
  Length width_;
};

Outcome<WallThings> seenAcross(const Mirror& mirror, WallThings things) {
  for (Opening& opening : things.openings) {
    auto place = mirror.anchor(opening.place, opening.width);
    if (!place) return place.faults();
    opening.place = place.value();
  }
  for (Penetration& penetration : things.penetrations) {
    auto place = mirror.anchor(penetration.place, Length());
    if (!place) return place.faults();
    penetration.place = place.value();
  }
  for (Girt& girt : things.girts) girt = mirror.girt(girt);
  return things;
}

}  // namespace

std::optional<std::size_t> oppositeWall(const Job& job, std::size_t wall) {
  const auto edge = edgeOf(job.walls.at(wall));
  if (!edge || !isRectangle(job.building.outline)) return std::nullopt;
  const auto across = indexOfWall(job, std::string(1, static_cast<char>('A' + (*edge + 2) % 4)));
  if (!across || !edgeOf(job.walls[*across])) return std::nullopt;
  return across;
}

Outcome<MadeParts> mirroredToOpposite(const Job& job, std::size_t wall, const std::vector<Part>& parts) {
  const Wall& on = job.walls.at(wall);
  const auto across = oppositeWall(job, wall);
  if (!across)
    return Fault{joined("walls.", on.letter),
                 "has no wall across; only a rectangular building has, where that wall is stated too"};
  auto things = thingsOf(on, parts);
  if (!things) return things.faults();
  const auto width = faceWidth(job, on);
  if (!width) return width.faults();
  auto seen = seenAcross(Mirror(job, on, job.walls[*across], width.value()), std::move(things).value());
  if (!seen) return seen.faults();
  return withThings(job, *across, std::move(seen).value());
}

}  // namespace ribwright
