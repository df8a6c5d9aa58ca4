#include "ui/board/underlay.h"

#include <QPainter>

namespace ribwright {

void paintUnderlay(QPainter& painter, const Underlay& underlay, const BoardView& view, const QRectF& area) {
  const QTransform onScreen(view.zoom, 0, 0, view.zoom, view.origin.x(), view.origin.y());
  painter.save();
  painter.setOpacity(underlay.strength);
  paintPicture(painter, underlay.picture, underlay.toFace * onScreen, area);
  painter.restore();
}

}  // namespace ribwright
