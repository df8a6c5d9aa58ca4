#include "ui/board/lit_part.h"

#include <QPainter>
#include <QPainterPath>

#include "core/drawing/ring_within.h"

namespace ribwright {

namespace {

constexpr double beyond = 40;  // pixels beyond the view that are still drawn

Box around(const BoardView& view, const QRectF& area) {
  const PaperPoint a = view.placeOf(area.topLeft()), b = view.placeOf(area.bottomRight());
  return Box{a.x, a.y, b.x, b.y}.grown(beyond / view.zoom);
}

void paintArea(QPainter& painter, const BoardThing& thing, const BoardView& view, const Box& seen) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  for (const auto& ring : thing.rings) {
    QPolygonF polygon;
    for (const PaperPoint& point : ringWithin(ring, seen)) polygon << view.at(point);
    path.addPolygon(polygon);
    path.closeSubpath();
  }
  painter.drawPath(path);
}

void paintLine(QPainter& painter, const BoardThing& thing, const BoardView& view, const Box& seen, double end) {
  for (const auto& line : thing.rings) {
    const auto part = lineWithin(line.front(), line.back(), seen);
    if (part) painter.drawLine(view.at(part->first), view.at(part->second));
    for (const PaperPoint& point : {line.front(), line.back()}) {
      const QPointF at = view.at(point);
      painter.drawRect(QRectF(at.x() - end, at.y() - end, 2 * end, 2 * end));
    }
  }
}

void paintScrew(QPainter& painter, const QPointF& at, double capital) {
  const double inner = 0.9 * capital, outer = 1.7 * capital;
  painter.drawEllipse(at, inner, inner);
  for (const auto& [x, y] : {std::pair(1, 0), std::pair(-1, 0), std::pair(0, 1), std::pair(0, -1)})
    painter.drawLine(at + QPointF(x, y) * inner, at + QPointF(x, y) * outer);
}

}  // namespace

void paintLit(QPainter& painter, const BoardPicture& picture, const Part& part, Lit lit, const BoardView& view,
              const QRectF& area, double capital, const QColor& colour) {
  Box place{};
  if (!placeOf(picture, part, place)) return;
  const bool chosen = lit == Lit::Chosen, changed = lit == Lit::Changed;
  QColor hatch = colour;
  hatch.setAlphaF(0.55F);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, chosen ? 3 : 1.5, changed ? Qt::DashLine : Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  painter.setBrush(chosen    ? QBrush(hatch, Qt::BDiagPattern)
                   : changed ? QBrush(hatch, Qt::Dense6Pattern)
                             : QBrush(Qt::NoBrush));
  if (part.kind == Part::Kind::Screw) {
    painter.setBrush(Qt::NoBrush);
    return paintScrew(painter, view.at(PaperPoint{place.left, place.top}), capital);
  }
  const Box seen = around(view, area);
  for (const int index : thingsOf(picture, part)) {
    const BoardThing& thing = picture.things[static_cast<std::size_t>(index)];
    if (thing.open) painter.setBrush(colour);
    thing.open ? paintLine(painter, thing, view, seen, chosen ? 3 : 1.5) : paintArea(painter, thing, view, seen);
  }
}

}  // namespace ribwright
