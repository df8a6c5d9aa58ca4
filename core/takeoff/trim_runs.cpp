// Eaves and rakes, bases and transitions of a wall: trim along its whole width.
#include <algorithm>

#include "core/layout/crossing.h"
#include "core/layout/whole_root.h"
#include "core/takeoff/trim_place_parts.h"

namespace ribwright::trim_places {
namespace {

void put(const WallFace& face, TrimRule::Where where, FaceVertex from, FaceVertex to, Length size, Places& places) {
  TrimPlace place;
  place.where = where;
  place.wall = face.letter;
  place.size = size;
  place.from = from;
  place.to = to;
  places.push_back(std::move(place));
}

struct Straights {
  std::vector<Straight> parts;  // from the left, a.u < b.u

  // One that goes straight on from the last is the same part.
  void add(FaceVertex a, FaceVertex b) {
    if (!parts.empty() && goesOn(parts.back(), a, b)) {
      parts.back().b = b;
    } else {
      parts.push_back({a, b});
    }
  }
  static bool goesOn(const Straight& last, FaceVertex a, FaceVertex b) {
    if (last.b != a) return false;
    const Int128 rise = (b.z - a.z).nanometres(), run = (b.u - a.u).nanometres();
    return Int128((last.b.z - last.a.z).nanometres()) * run == Int128((last.b.u - last.a.u).nanometres()) * rise;
  }
};

// The straight parts of a line between the wall's corners.
std::vector<Straight> straightsOf(const HeightLine& line, Length width) {
  std::vector<Length> breaks{Length(), width};
  for (const FaceVertex& vertex : line.vertices()) {
    if (vertex.u > Length() && vertex.u < width) breaks.push_back(vertex.u);
  }
  std::sort(breaks.begin(), breaks.end());
  Straights straights;
  for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
    const Length left = breaks[i], right = breaks[i + 1];
    if (left == right) continue;
    straights.add({left, line.heightAt(left, Beside::Right)}, {right, line.heightAt(right, Beside::Left)});
  }
  return straights.parts;
}

// The whole nanometre next above, where it is none.
Length along(const Straight& straight) {
  const Int128 run = (straight.b.u - straight.a.u).nanometres(), rise = (straight.b.z - straight.a.z).nanometres();
  const Int128 square = run * run + rise * rise, root = wholeRoot(square);
  return Length::nanometres(static_cast<std::int64_t>(root * root < square ? root + 1 : root));
}

// As far as this part stands above (sign 1), or below (-1), the height z.
std::optional<Stretch> beyond(const Straight& part, Length z, int sign) {
  const auto is = [&](const FaceVertex& end) { return (end.z - z) * sign > Length(); };
  if (!is(part.a) && !is(part.b)) return std::nullopt;
  Stretch stretch{part.a.u, part.b.u};
  if (is(part.a) && is(part.b)) return stretch;
  const Length u = *crossing(part, {{Length(), z}, {Length(), z}});
  (is(part.a) ? stretch.right : stretch.left) = u;
  if (stretch.left >= stretch.right) return std::nullopt;
  return stretch;
}

// TrimRule::Where a wall's bottom is below z and its top above it, joined where they go on.
std::vector<Stretch> facedAt(const WallFace& face, Length z) {
  std::vector<Stretch> found;
  for (const Straight& low : straightsOf(face.bottom, face.width)) {
    const auto below = beyond(low, z, -1);
    if (!below) continue;
    for (const Straight& high : straightsOf(face.top, face.width)) {
      const auto above = beyond(high, z, 1);
      if (!above) continue;
      const Stretch both{std::max(below->left, above->left), std::min(below->right, above->right)};
      if (both.left >= both.right) continue;
      if (!found.empty() && found.back().right == both.left) {
        found.back().right = both.right;
      } else {
        found.push_back(both);
      }
    }
  }
  return found;
}

void addLevel(const WallLayout& layout, TrimRule::Where where, const Stretch& whole, Length z, Places& places) {
  for (const Stretch& one : lessOpenings(whole, z, layout))
    put(layout.face, where, {one.left, z}, {one.right, z}, one.right - one.left, places);
}

}  // namespace

void addTops(const WallLayout& layout, Places& places) {
  for (const Straight& part : straightsOf(layout.face.top, layout.face.width))
    put(layout.face, part.level() ? TrimRule::Where::Eave : TrimRule::Where::Rake, part.a, part.b, along(part), places);
}

void addBases(const Wall& wall, const WallLayout& layout, Places& places) {
  const bool trimmed = wall.base.form == Base::Form::BaseTrim || wall.base.form == Base::Form::OnWall;
  if (!trimmed) return;
  for (const Straight& part : straightsOf(layout.face.bottom, layout.face.width))
    addLevel(layout, TrimRule::Where::Base, {part.a.u, part.b.u}, part.a.z, places);
}

void addTransitions(const Wall& wall, const WallLayout& layout, Places& places) {
  for (std::size_t band = 1; band < wall.bands.size(); ++band) {
    const auto& from = wall.bands[band].from;
    if (!from) continue;
    for (const Stretch& whole : facedAt(layout.face, *from))
      addLevel(layout, TrimRule::Where::Transition, whole, *from, places);
  }
}

}  // namespace ribwright::trim_places
