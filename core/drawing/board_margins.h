// What is written round the wall: heights of girts and eaves at the left, of bands at the right, numbers of columns and
// the hanging direction below, ridge and joints above.
#pragma once

#include <vector>

#include "core/drawing/board_picture.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// With the start flag and the hang arrow, which are marks.
void addMarginLabels(std::vector<BoardLabel>& labels, BoardPicture& picture, const WallView& view);

BoardMargins marginsOf(const std::vector<BoardLabel>& labels);

}  // namespace ribwright
