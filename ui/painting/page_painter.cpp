#include "ui/painting/page_painter.h"

#include <QHash>

#include "core/drawing/text_extent.h"
#include "ui/painting/glyphs.h"
#include "ui/painting/paper_font.h"
#include "ui/painting/shapes.h"

namespace ribwright {

namespace {

class PagePainter {
 public:
  PagePainter(QPainter& painter, double pixel) : painter_(painter), pixel_(pixel) {}

  void paint(const Stroke& stroke) {
    const double width =
        stroke.width.in == StrokeWidth::In::PixelsOnScreen ? stroke.width.size * pixel_ : stroke.width.size;
    QPen pen(Qt::black, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (stroke.dash != Dash::Solid) pen.setDashPattern(dashesOf(stroke.dash, width, 1));
    painter_.setPen(pen);
    painter_.setBrush(Qt::NoBrush);
    if (stroke.closed) {
      painter_.drawPolygon(polygonOf(stroke.points));
    } else {
      painter_.drawPolyline(polygonOf(stroke.points));
    }
  }

  void paint(const Fill& fill) {
    painter_.fillPath(pathOf(fill.rings), fill.ink == Ink::Black ? Qt::black : Qt::white);
  }

  void paint(const Text& text) {
    const double start = text.anchor == TextAnchor::Start    ? 0
                         : text.anchor == TextAnchor::Middle ? -widthOf(text) / 2
                                                             : -widthOf(text);
    const QGlyphRun run = glyphsOf(text.words, fontOf(emOf(text.height), text.bold), text.bold);
    painter_.save();
    painter_.setPen(Qt::black);
    painter_.translate(text.at.x, text.at.y);
    painter_.rotate(-text.turn);
    painter_.scale(1 / oversize, 1 / oversize);
    painter_.drawGlyphRun(QPointF(start * oversize, 0), run);
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
