// A picture of the plans under the lines of a wall, to be traced.
#pragma once

#include <QTransform>

#include "ui/board/scaled_picture.h"
#include "ui/painting/board_view.h"

namespace ribwright {

struct Underlay {
  ScaledPicture picture;
  QTransform toFace;      // from its pixels to mm on the wall's face: x = u, y = -z
  double strength = 0.5;  // 0: not seen, 1: nothing is seen through it
};

void paintUnderlay(QPainter& painter, const Underlay& underlay, const BoardView& view, const QRectF& area);

}  // namespace ribwright
