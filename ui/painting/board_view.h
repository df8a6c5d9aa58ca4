// How a board is looked at: pixels per millimetre of wall, and the pixel of the face's origin (u = 0, z = 0).
#pragma once

#include <QPointF>
#include <QRectF>

#include "core/drawing/box.h"

namespace ribwright {

struct BoardView {
  QPointF origin;
  double zoom = 0.1;
  QPointF at(const PaperPoint& place) const { return {origin.x() + place.x * zoom, origin.y() + place.y * zoom}; }
  QRectF at(const Box& box) const { return {at(PaperPoint{box.left, box.top}), at(PaperPoint{box.right, box.bottom})}; }
  PaperPoint placeOf(const QPointF& pixel) const {
    return {(pixel.x() - origin.x()) / zoom, (pixel.y() - origin.y()) / zoom};
  }
  bool operator==(const BoardView&) const = default;
};

}  // namespace ribwright
