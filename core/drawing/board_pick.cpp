#include "core/drawing/board_pick.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace ribwright {

namespace {

double distance(const PaperPoint& a, const PaperPoint& b) { return std::hypot(a.x - b.x, a.y - b.y); }

double distance(const PaperPoint& place, const PaperPoint& a, const PaperPoint& b) {
  const double dx = b.x - a.x, dy = b.y - a.y, square = dx * dx + dy * dy;
  const double along = square > 0 ? std::clamp(((place.x - a.x) * dx + (place.y - a.y) * dy) / square, 0.0, 1.0) : 0;
  return distance(place, {a.x + along * dx, a.y + along * dy});
}

double distance(const PaperPoint& place, const BoardThing& thing) {
  double nearest = kNoLimit;
  for (const auto& line : thing.rings) {
    for (std::size_t i = 1; i < line.size(); ++i) nearest = std::min(nearest, distance(place, line[i - 1], line[i]));
  }
  return nearest;
}

std::optional<Part> screwAt(const BoardPicture& picture, const PaperPoint& place, double reach, double zoom) {
  int index = -1;
  double nearest = reach;
  for (const BoardMarks& layer : picture.screws) {
    if (!layer.zoom.shows(zoom)) continue;
    const auto [first, last] = layer.marks.between(place.x - reach, place.x + reach);
    for (std::size_t i = first; i < last; ++i) {
      const BoardMark& mark = layer.marks.all()[i];
      if (distance(place, mark.at) > nearest) continue;
      nearest = distance(place, mark.at);
      index = mark.index;
    }
  }
  if (index < 0) return std::nullopt;
  return Part{Part::Kind::Screw, picture.letter, std::to_string(index)};
}

// Of several that lie over one another the smallest.
const BoardThing* areaAt(const BoardPicture& picture, Part::Kind kind, const PaperPoint& place) {
  const BoardThing* best = nullptr;
  const auto size = [](const BoardThing& thing) { return thing.box.width() * thing.box.height(); };
  for (const BoardThing& thing : picture.things) {
    if (thing.part.kind != kind || !overlap(thing.box.grown(0.5), {place.x, place.y, place.x, place.y})) continue;
    if (isInside(thing.rings, place) && (!best || size(thing) < size(*best))) best = &thing;
  }
  return best;
}

const BoardThing* lineAt(const BoardPicture& picture, Part::Kind kind, const PaperPoint& place, double reach) {
  const BoardThing* best = nullptr;
  for (const BoardThing& thing : picture.things) {
    if (thing.part.kind != kind) continue;
    const double off = distance(place, thing);
    if (off > reach) continue;
    best = &thing;
    reach = off;
  }
  return best;
}

}  // namespace

bool isInside(const std::vector<std::vector<PaperPoint>>& rings, const PaperPoint& place) {
  bool inside = false;
  for (const auto& ring : rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const PaperPoint& a = ring[i];
      const PaperPoint& b = ring[(i + 1) % ring.size()];
      if ((a.y > place.y) == (b.y > place.y)) continue;
      if (place.x < a.x + (b.x - a.x) * (place.y - a.y) / (b.y - a.y)) inside = !inside;
    }
  }
  return inside;
}

std::optional<Part> partAt(const BoardPicture& picture, const PaperPoint& place, double reach, double zoom) {
  if (const auto screw = screwAt(picture, place, reach, zoom)) return screw;
  const BoardThing* found = areaAt(picture, Part::Kind::Penetration, place);
  if (!found) found = areaAt(picture, Part::Kind::Opening, place);
  if (!found) found = lineAt(picture, Part::Kind::Girt, place, reach);
  if (!found) found = lineAt(picture, Part::Kind::Column, place, reach);
  if (!found) found = areaAt(picture, Part::Kind::Piece, place);
  if (!found) return std::nullopt;
  return found->part;
}

}  // namespace ribwright
