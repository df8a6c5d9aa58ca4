#include "ui/board/rulers.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QList>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/drawing/board_ruler.h"

namespace ribwright {

namespace {

constexpr double betweenFigures = 18;  // pixels
constexpr double betweenTicks = 5;

// A ruler lies level; the one up the side is turned a quarter to the left. `start`: mm at its left end.
struct Ruler {
  double length = 0, thickness = 0;  // pixels
  double start = 0, zoom = 1;
  double pixel(Length place) const { return (place.inMillimetres() - start) * zoom; }
};

QString figure(Length place, const LengthStyle& style) { return QString::fromStdString(rulerFigure(place, style)); }

Length millimetres(double mm) { return Length::nanometres(std::llround(mm * 1e6)); }

// So coarse that the widest figure has room.
RulerSteps stepsOf(const Ruler& ruler, const LengthStyle& style, const QFontMetricsF& metrics) {
  double figures = 30;
  RulerSteps steps = rulerSteps(style.units, ruler.zoom, figures, betweenTicks);
  for (int times = 0; times < 6; ++times) {
    double widest = 0;
    for (const double at : {0.1, 0.4, 0.7, 0.9}) {
      const Length place = roundTo(millimetres(ruler.start + at * ruler.length / ruler.zoom), steps.labelled);
      for (const Length more : {Length(), steps.labelled})
        widest = std::max(widest, metrics.horizontalAdvance(figure(place + more, style)));
    }
    if (widest + betweenFigures <= figures) break;
    figures = widest + betweenFigures;
    steps = rulerSteps(style.units, ruler.zoom, figures, betweenTicks);
  }
  return steps;
}

void paintRuler(QPainter& painter, const Ruler& ruler, const LengthStyle& style, const QFontMetricsF& metrics) {
  const RulerSteps steps = stepsOf(ruler, style, metrics);
  const double half = metrics.height();
  Length place = steps.labelled * (wholeTimes(millimetres(ruler.start), steps.labelled) - 1);
  QList<QLineF> ticks;
  for (; ruler.pixel(place) < ruler.length + steps.labelled.inMillimetres() * ruler.zoom; place += steps.marked) {
    const bool labelled = rest(place, steps.labelled) == Length();
    const double x = std::floor(ruler.pixel(place)) + 0.5;
    ticks.push_back({x, ruler.thickness - (labelled ? 6 : 3), x, ruler.thickness});
    if (!labelled) continue;
    const QString text = figure(place, style);
    painter.drawText(QPointF(x - metrics.horizontalAdvance(text) / 2, 1 + half - metrics.descent()), text);
  }
  ticks.push_back({0, ruler.thickness - 0.5, ruler.length, ruler.thickness - 0.5});
  painter.drawLines(ticks);
}

}  // namespace

double rulerSize(const QFont& font) { return std::ceil(QFontMetricsF(font).height() + 8); }

void paintRulers(QPainter& painter, const QRectF& whole, const BoardView& view, const LengthStyle& style,
                 const QFont& font, const QPalette& palette) {
  const double size = rulerSize(font);
  const QFontMetricsF metrics(font);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setFont(font);
  painter.fillRect(QRectF(whole.left(), whole.top(), whole.width(), size), palette.color(QPalette::Window));
  painter.fillRect(QRectF(whole.left(), whole.top(), size, whole.height()), palette.color(QPalette::Window));
  painter.setPen(palette.color(QPalette::WindowText));
  painter.save();
  painter.setClipRect(QRectF(whole.left() + size, whole.top(), whole.width() - size, size));
  painter.translate(whole.left() + size, whole.top());
  paintRuler(painter, {whole.width() - size, size, view.placeOf({whole.left() + size, 0}).x, view.zoom}, style,
             metrics);
  painter.restore();
  painter.save();
  painter.setClipRect(QRectF(whole.left(), whole.top() + size, size, whole.height() - size));
  painter.translate(whole.left(), whole.bottom());
  painter.rotate(-90);
  paintRuler(painter, {whole.height() - size, size, -view.placeOf({0, whole.bottom()}).y, view.zoom}, style, metrics);
  painter.restore();
}

}  // namespace ribwright
