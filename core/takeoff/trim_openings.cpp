// Heads, sills, jambs and covers of a wall's openings.
#include <algorithm>

#include "core/job/by_id.h"
#include "core/takeoff/trim_place_parts.h"

namespace ribwright::trim_places {
namespace {

using Side = TrimPlace::Side;

class OpeningPlaces {
 public:
  OpeningPlaces(const WallFace& face, const CutRegion& cut, const Opening& opening, Places& places)
      : face_(face),
        cut_(cut),
        opening_(opening),
        left_(*cut.steelLeft),
        right_(*cut.steelRight),
        sill_(*cut.steelBottom),
        head_(*cut.steelTop),
        places_(places) {}

  void add() {
    if (!meetsSheets()) return;
    if (!cut_.reachesFloor && sill_ > face_.bottom.lowest(left_, right_)) addLevel(TrimRule::Where::Sill, sill_, true);
    addJambs(TrimRule::Where::Jamb);
    if (head_ < face_.top.highest(left_, right_)) addLevel(TrimRule::Where::Head, head_, true);
    addJambs(TrimRule::Where::JambCover);
    addLevel(TrimRule::Where::HeaderCover, head_, false);
  }

 private:
  bool meetsSheets() const {
    const Length from = std::max(left_, Length()), to = std::min(right_, face_.width);
    return from < to && head_ > face_.bottom.lowest(from, to) &&
           (cut_.reachesFloor || sill_ < face_.top.highest(from, to));
  }

  // Beyond the steel on both sides by the jamb trims, or steel to steel.
  void addLevel(TrimRule::Where where, Length z, bool overTrims) {
    const Length beyond = overTrims ? opening_.jambTrim : Length();
    put(where, Side::None, {left_ - beyond, z}, {right_ + beyond, z}, right_ - left_ + beyond * 2);
  }

  // Trim lies on the sheets beside the opening; a cover lies on the steel within.
  void addJambs(TrimRule::Where where) {
    const bool within = where == TrimRule::Where::JambCover;
    for (const Side side : {Side::Left, Side::Right}) {
      const Length u = side == Side::Left ? left_ : right_;
      const Beside beside = (side == Side::Left) == within ? Beside::Right : Beside::Left;
      const Length low = within ? coverFoot(u, beside) : trimFoot(u, beside);
      const Length high = within ? head_ : std::min(head_, face_.top.heightAt(u, beside));
      if (low < high) put(where, side, {u, low}, {u, high}, high - low);
    }
  }
  Length coverFoot(Length u, Beside beside) const {
    return cut_.reachesFloor ? face_.concrete.heightAt(u, beside) : sill_;
  }
  Length trimFoot(Length u, Beside beside) const {
    const Length bottom = face_.bottom.heightAt(u, beside);
    return cut_.reachesFloor ? bottom : std::max(sill_, bottom);
  }

  void put(TrimRule::Where where, Side side, FaceVertex from, FaceVertex to, Length size) {
    TrimPlace place;
    place.where = where;
    place.wall = face_.letter;
    place.opening = opening_.id;
    place.kind = opening_.kind;
    place.side = side;
    place.size = size;
    place.from = from;
    place.to = to;
    places_.push_back(std::move(place));
  }

  const WallFace& face_;
  const CutRegion& cut_;
  const Opening& opening_;
  Length left_, right_, sill_, head_;
  Places& places_;
};

}  // namespace

void addOpenings(const Wall& wall, const WallLayout& layout, Places& places) {
  for (const CutRegion& cut : layout.cuts) {
    if (cut.penetration) continue;
    if (const Opening* opening = byId(wall.openings, cut.id)) OpeningPlaces(layout.face, cut, *opening, places).add();
  }
}

std::vector<Stretch> lessOpenings(const Stretch& whole, Length z, const WallLayout& layout) {
  std::vector<Stretch> taken;
  for (const CutRegion& cut : layout.cuts) {
    const bool across = !cut.penetration && (cut.reachesFloor || *cut.steelBottom <= z) && *cut.steelTop > z;
    if (across) taken.push_back({*cut.steelLeft, *cut.steelRight});
  }
  std::sort(taken.begin(), taken.end(), [](const Stretch& a, const Stretch& b) { return a.left < b.left; });
  std::vector<Stretch> rest;
  Length from = whole.left;
  for (const Stretch& one : taken) {
    const Length to = std::min(one.left, whole.right);
    if (from < to) rest.push_back({from, to});
    from = std::max(from, one.right);
  }
  if (from < whole.right) rest.push_back({from, whole.right});
  return rest;
}

}  // namespace ribwright::trim_places
