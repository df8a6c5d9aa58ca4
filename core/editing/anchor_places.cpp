#include "core/editing/anchor_places.h"

#include "core/job/job_file_joined.h"
#include "core/layout/wall_face.h"
#include "core/layout/whole_root.h"

namespace ribwright {
namespace {

Fault noColumn(const Wall& wall, int column) {
  return {joined("walls.", wall.letter, ".columns"),
          joined("there is no column ", column, "; add it, or measure from another column or a corner")};
}

}  // namespace

Outcome<Length> faceWidth(const Job& job, const Wall& wall) {
  if (const auto line = planLine(job, wall)) return distance(line->from, line->to);
  if (wall.width) return *wall.width;
  return Fault{joined("walls.", wall.letter),
               "has no place; give it a plan line, a width, or a letter of the building's outline"};
}

Outcome<Length> anchoredPlace(const Job& job, const Wall& wall, const Anchor& anchor) {
  switch (anchor.from) {
    case Anchor::From::LeftCorner:
      return anchor.distance;
    case Anchor::From::RightCorner: {
      const auto width = faceWidth(job, wall);
      if (!width) return width.faults();
      return width.value() - anchor.distance;
    }
    case Anchor::From::Column:
      break;
  }
  const auto column = columnAt(wall.columns, anchor.column);
  if (!column) return noColumn(wall, anchor.column);
  return *column + anchor.distance;
}

Outcome<Anchor> anchoredAt(const Job& job, const Wall& wall, const Anchor& stated, Length u) {
  const auto now = anchoredPlace(job, wall, stated);
  if (!now) return now.faults();
  Anchor anchor = stated;
  const Length onward = u - now.value();
  anchor.distance += stated.from == Anchor::From::RightCorner ? -onward : onward;
  return anchor;
}

Anchor anchorNear(const Wall& wall, Length u) {
  Anchor anchor;
  anchor.distance = u;
  int number = 0;
  for (const Length column : columnsOf(wall.columns)) {
    ++number;
    if (anchor.column != 0 && absolute(u - column) >= absolute(anchor.distance)) continue;
    anchor.from = Anchor::From::Column;
    anchor.column = number;
    anchor.distance = u - column;
  }
  return anchor;
}

Length anchoredEdge(const Anchor& anchor, Length width, Length left) {
  if (anchor.to == Anchor::To::Centre) return left + half(width);
  return anchor.from == Anchor::From::RightCorner ? left + width : left;
}

Length leftOf(const Anchor& anchor, Length width, Length named) {
  if (anchor.to == Anchor::To::Centre) return named - half(width);
  return anchor.from == Anchor::From::RightCorner ? named - width : named;
}

}  // namespace ribwright
