// One wall, or what of it stands between two match lines, with all its labels and dimensions, ready to be put on a
// page.
#pragma once

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// Match lines are numbered from the left corner; `page` is where the drawing goes on.
struct MatchMark {
  int number = 0;
  int page = 0;
};

struct WallPicture {
  Drawing drawing;  // x = 0 at the view's left limit, y = 0 at concrete
  Box bounds;
  int withoutRoom = 0;      // labels that found no free place; the tables hold them
  int marksLeftOut = 0;     // screws whose marks found no free place
  int rowsWithoutRoom = 0;  // girts whose heights found no place beside the wall
};

// `left` and `right` are used where the view does not reach the corner.
WallPicture wallPicture(const WallView& view, const MatchMark& left, const MatchMark& right);

}  // namespace ribwright
