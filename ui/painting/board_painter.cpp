#include "ui/painting/board_painter.h"

#include <algorithm>
#include <cmath>

#include "ui/painting/shapes.h"

namespace ribwright {

namespace {

constexpr double dashUnit = 2.2;  // pixels to a millimetre of the dashes on paper
constexpr double overEdge = 4;    // pixels that lines go on beyond the view

// The wall that is seen, mm.
Box seenOf(const BoardView& view, const QRectF& area) {
  const PaperPoint a = view.placeOf(area.topLeft()), b = view.placeOf(area.bottomRight());
  return {a.x, a.y, b.x, b.y};
}

QPolygonF onScreen(const std::vector<PaperPoint>& ring, const BoardView& view) {
  QPolygonF polygon;
  polygon.reserve(static_cast<qsizetype>(ring.size()));
  for (const PaperPoint& point : ring) polygon << view.at(point);
  return polygon;
}

void gatherAreas(const BoardAreas& layer, const BoardView& view, const Box& seen, SeenAreas& to) {
  const auto [first, last] = layer.areas.between(seen.left, seen.right);
  for (std::size_t i = first; i < last; ++i) {
    const BoardArea& area = layer.areas.all()[i];
    if (area.box.right < seen.left || area.box.bottom < seen.top || area.box.top > seen.bottom) continue;
    if (area.rings.size() == 1) {
      to.plain.push_back(onScreen(area.rings.front(), view));
      continue;
    }
    QPainterPath path;
    for (const auto& ring : area.rings) {
      path.addPolygon(onScreen(ring, view));
      path.closeSubpath();
    }
    to.withHoles.push_back(path);
  }
}

// A level or upright line without what lies far outside, its dashes where they were.
QLineF nearView(const QLineF& line, const QRectF& area, double period) {
  const auto cut = [&](double from, double to, double low, double high) {
    const double way = from <= to ? 1 : -1;
    const double near = way > 0 ? low - from : from - high;
    if (near > overEdge) from += way * std::floor((near - overEdge) / period) * period;
    to = way > 0 ? std::min(to, high + overEdge) : std::max(to, low - overEdge);
    return std::pair(from, to);
  };
  const auto [x1, x2] = cut(line.x1(), line.x2(), area.left(), area.right());
  const auto [y1, y2] = cut(line.y1(), line.y2(), area.top(), area.bottom());
  return {x1, y1, x2, y2};
}

QPen penOf(const BoardLines& layer, const BoardInks& inks) {
  QPen pen(inks.of(layer.tone), layer.width, Qt::SolidLine, layer.dash == Dash::Solid ? Qt::SquareCap : Qt::FlatCap,
           Qt::MiterJoin);
  if (layer.dash != Dash::Solid) pen.setDashPattern(dashesOf(layer.dash, layer.width, dashUnit));
  return pen;
}

double periodOf(const QPen& pen) {
  double sum = 0;
  if (pen.style() == Qt::CustomDashLine) {
    for (const qreal length : pen.dashPattern()) sum += length * pen.widthF();
  }
  return std::max(sum, 1.0);
}

void gatherLines(const BoardLines& layer, const BoardView& view, const QRectF& area, const Box& seen, SeenLines& to) {
  const double period = periodOf(to.pen);
  const auto [first, last] = layer.lines.between(seen.left, seen.right);
  for (std::size_t i = first; i < last; ++i) {
    const BoardLine& line = layer.lines.all()[i];
    const auto [top, bottom] = std::minmax(line.a.y, line.b.y);
    if (line.right() < seen.left || bottom < seen.top || top > seen.bottom) continue;
    const QLineF drawn(view.at(line.a), view.at(line.b));
    if (line.a.x == line.b.x || line.a.y == line.b.y) {
      to.crisp.push_back(nearView(drawn, area, period));
    } else {
      to.slanting.push_back(drawn);
    }
  }
}

void gatherMarks(const BoardMarks& layer, const BoardView& view, const Box& seen, double capital, SeenMarks& to) {
  to.shape = polygonOf(layer.ring);
  double reach = 0;
  for (QPointF& point : to.shape) {
    point *= capital;
    reach = std::max({reach, std::abs(point.x()), std::abs(point.y())});
  }
  const Box grown = seen.grown(reach / view.zoom);
  const auto [first, last] = layer.marks.between(grown.left, grown.right);
  for (std::size_t i = first; i < last; ++i) {
    const BoardMark& mark = layer.marks.all()[i];
    if (mark.at.y >= grown.top && mark.at.y <= grown.bottom) to.places.push_back(view.at(mark.at));
  }
}

}  // namespace

const SeenBoard& BoardPainter::gather(const BoardPicture& picture, const BoardView& view, const QRectF& area,
                                      const BoardInks& inks, const std::vector<QRectF>& barred) {
  seen_ = SeenBoard();
  const Box seen = seenOf(view, area);
  for (const BoardAreas& layer : picture.areas) {
    seen_.areas.push_back({QBrush(inks.of(layer.tone)), {}, {}});
    gatherAreas(layer, view, seen, seen_.areas.back());
  }
  for (const BoardLines& layer : picture.lines) {
    if (!layer.zoom.shows(view.zoom)) continue;
    seen_.lines.push_back({penOf(layer, inks), {}, {}});
    gatherLines(layer, view, area, seen, seen_.lines.back());
  }
  for (const auto* layers : {&picture.marks, &picture.screws}) {
    for (const BoardMarks& layer : *layers) {
      if (!layer.zoom.shows(view.zoom)) continue;
      seen_.marks.push_back({QBrush(inks.of(layer.tone)), {}, {}});
      gatherMarks(layer, view, seen, capital(), seen_.marks.back());
      seen_.screws = seen_.screws || layers == &picture.screws;
    }
  }
  glyphs_.gather(picture, view, area, inks, barred, seen_.labels);
  return seen_;
}

}  // namespace ribwright
