#include "ui/painting/shapes.h"

namespace ribwright {

QPolygonF polygonOf(const std::vector<PaperPoint>& points) {
  QPolygonF made;
  made.reserve(static_cast<qsizetype>(points.size()));
  for (const PaperPoint& point : points) made << QPointF(point.x, point.y);
  return made;
}

QPainterPath pathOf(const std::vector<std::vector<PaperPoint>>& rings) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  for (const auto& ring : rings) {
    path.addPolygon(polygonOf(ring));
    path.closeSubpath();
  }
  return path;
}

QList<qreal> dashesOf(Dash dash, double width, double unit) {
  if (dash == Dash::Solid) return {};
  QList<qreal> lengths = dash == Dash::Dashed ? QList<qreal>{3, 1.5} : QList<qreal>{8, 1.5, 1, 1.5};
  for (qreal& length : lengths) length *= unit / width;
  return lengths;
}

}  // namespace ribwright
