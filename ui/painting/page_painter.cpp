#include "ui/painting/page_painter.h"

#include <QGlyphRun>
#include <QHash>
#include <QPainterPath>
#include <QPolygonF>

#include "core/drawing/letter_widths.h"
#include "core/drawing/text_extent.h"
#include "ui/painting/paper_font.h"

namespace ribwright {

namespace {

QPolygonF polygon(const std::vector<PaperPoint>& points) {
  QPolygonF made;
  made.reserve(static_cast<qsizetype>(points.size()));
  for (const PaperPoint& point : points) made << QPointF(point.x, point.y);
  return made;
}

// Qt counts dashes in widths of the pen.
QVector<qreal> dashes(Dash dash, double width) {
  if (dash == Dash::Dashed) return {3 / width, 1.5 / width};
  return {8 / width, 1.5 / width, 1 / width, 1.5 / width};
}

class PagePainter {
 public:
  PagePainter(QPainter& painter, double pixel) : painter_(painter), pixel_(pixel) {}

  void paint(const Stroke& stroke) {
    const double width =
        stroke.width.in == StrokeWidth::In::PixelsOnScreen ? stroke.width.size * pixel_ : stroke.width.size;
    QPen pen(Qt::black, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (stroke.dash != Dash::Solid) pen.setDashPattern(dashes(stroke.dash, width));
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    if (stroke.closed) {
      painter_.drawPolygon(polygon(stroke.points));
    } else {
      painter_.drawPolyline(polygon(stroke.points));
    }
  }

  void paint(const Fill& fill) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const auto& ring : fill.rings) {
      path.addPolygon(polygon(ring));
      path.closeSubpath();
    }
    painter_.fillPath(path, fill.ink == Ink::Black ? Qt::black : Qt::white);
  }

  // Letter by letter at core's advances, so that text takes exactly the room that core gave it.
  void paint(const Text& text) {
    const double em = emOf(text.height);
    const QRawFont& font = fontOf(em, text.bold);
    QVector<quint32> glyphs;
    QVector<QPointF> places;
    double along = text.anchor == TextAnchor::Start    ? 0
                   : text.anchor == TextAnchor::Middle ? -widthOf(text) / 2
                                                       : -widthOf(text);
    for (const char32_t letter : lettersOf(text.words)) {
      const QString one = QString::fromUcs4(&letter, 1);
      const auto found = font.glyphIndexesForString(one);
      glyphs << (found.isEmpty() ? 0u : found.front());
      places << QPointF(along * oversize, 0);
      along += em * advanceOf(letter, text.bold) / unitsOfEm;
    }
    QGlyphRun run;
    run.setRawFont(font);
    run.setGlyphIndexes(glyphs);
    run.setPositions(places);
    painter_.save();
    painter_.setPen(Qt::black);
    painter_.translate(text.at.x, text.at.y);
    painter_.rotate(-text.turn);
    painter_.scale(1 / oversize, 1 / oversize);
    painter_.drawGlyphRun(QPointF(0, 0), run);
    painter_.restore();
  }

 private:
  // A font of 3.6 units, which is what millimetres give, would be laid out in steps of 1/64 unit; a larger one, scaled
  // back, is exact enough.
  static constexpr double oversize = 32;

  const QRawFont& fontOf(double em, bool bold) {
    const std::pair<qint64, bool> key(qRound64(em * 1e6), bold);
    auto found = fonts_.find(key);
    if (found == fonts_.end()) found = fonts_.insert(key, paperFont(em * oversize, bold));
    return found.value();
  }

  QPainter& painter_;
  double pixel_;
  QHash<std::pair<qint64, bool>, QRawFont> fonts_;
};

}  // namespace

void paintDrawing(QPainter& painter, const Drawing& drawing, double pixel) {
  PagePainter pages(painter, pixel);
  for (const Item& item : drawing.items) {
    std::visit([&](const auto& it) { pages.paint(it); }, item);
  }
}

}  // namespace ribwright
