// Corners of the outline, outside or inside by its turn.
#include <algorithm>

#include "core/takeoff/trim_place_parts.h"

namespace ribwright::trim_places {
namespace {

// The sheeted wall on an edge of the outline; none: it is not stated, stands elsewhere, or carries no sheets.
const WallLayout* sheetedOn(const Job& job, const std::vector<const WallLayout*>& layouts, const std::string& letter) {
  for (const WallLayout* layout : layouts) {
    if (layout->letter != letter || !layout->sheeted) continue;
    const auto wall =
        std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& w) { return w.letter == letter; });
    if (wall != job.walls.end() && !wall->line && !wall->width) return layout;
  }
  return nullptr;
}

// Positive where the outline, counter-clockwise, turns outward at `at`; 0 where it goes straight on.
Int128 turn(const PlanPoint& before, const PlanPoint& at, const PlanPoint& after) {
  const auto product = [](Length a, Length b) { return Int128(a.nanometres()) * b.nanometres(); };
  return product(at.x - before.x, after.y - at.y) - product(at.y - before.y, after.x - at.x);
}

struct Upright {
  Length bottom, top;
};

Upright endOf(const WallFace& face, bool right) {
  const Length u = right ? face.width : Length();
  const Beside beside = right ? Beside::Left : Beside::Right;
  return {face.bottom.heightAt(u, beside), face.top.heightAt(u, beside)};
}

Upright lowerOf(const Upright& a, const Upright& b) { return {std::min(a.bottom, b.bottom), std::min(a.top, b.top)}; }

void addCorner(const WallLayout* wall, const WallLayout* other, TrimPlace place, Places& places) {
  if (!wall && !other) return;
  const Upright edge = !other  ? endOf(wall->face, true)
                       : !wall ? endOf(other->face, false)
                               : lowerOf(endOf(wall->face, true), endOf(other->face, false));
  if (edge.bottom >= edge.top) return;
  const Length u = wall ? wall->face.width : Length();
  place.size = edge.top - edge.bottom;
  place.from = {u, edge.bottom};
  place.to = {u, edge.top};
  places.push_back(std::move(place));
}

}  // namespace

void addCorners(const Job& job, const std::vector<const WallLayout*>& layouts, Places& places) {
  const auto& outline = job.building.outline;
  const std::size_t corners = outline.size();
  if (corners < 3 || corners > 26) return;
  const auto letter = [&](std::size_t edge) {
    return std::string(1, static_cast<char>('A' + static_cast<int>(edge % corners)));
  };
  for (std::size_t edge = 0; edge < corners; ++edge) {
    const Int128 bend = turn(outline[edge], outline[(edge + 1) % corners], outline[(edge + 2) % corners]);
    if (bend == 0) continue;
    TrimPlace place;
    place.where = bend > 0 ? TrimRule::Where::OutsideCorner : TrimRule::Where::InsideCorner;
    place.wall = letter(edge);
    place.other = letter(edge + 1);
    const WallLayout *wall = sheetedOn(job, layouts, place.wall), *other = sheetedOn(job, layouts, place.other);
    addCorner(wall, other, std::move(place), places);
  }
}

}  // namespace ribwright::trim_places
