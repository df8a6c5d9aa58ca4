#include "core/editing/column_anchors.h"

#include "core/layout/wall_face.h"

namespace ribwright {

void forEachColumnAnchor(Wall& wall, const std::function<void(Anchor&)>& edit) {
  for (Opening& opening : wall.openings) {
    if (opening.place.from == Anchor::From::Column) edit(opening.place);
  }
  for (Penetration& penetration : wall.penetrations) {
    if (penetration.place.from == Anchor::From::Column) edit(penetration.place);
  }
}

void restate(Anchor& anchor, const ColumnGrid& was, const ColumnGrid& is, int column) {
  anchor.distance += columnAt(was, anchor.column).value() - columnAt(is, column).value();
  anchor.column = column;
}

int nearestColumn(const ColumnGrid& columns, Length u) {
  int nearest = 1;
  Length at = columns.offset, best = absolute(u - at);
  for (std::size_t bay = 0; bay < columns.bays.size(); ++bay) {
    at += columns.bays[bay];
    if (absolute(u - at) >= best) continue;
    best = absolute(u - at);
    nearest = static_cast<int>(bay) + 2;
  }
  return nearest;
}

}  // namespace ribwright
