#include "ui/board/hand_picture.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ribwright {

namespace {

constexpr double gripSize = 4;  // pixels from its middle
constexpr double tickSize = 4;
constexpr double plateMargin = 4;

// Those to one side begin or end at the same edge.
int rowOf(const std::vector<HandPicture::Gap>& gaps, std::size_t index) {
  const NeighbourGap& gap = gaps[index].between;
  return static_cast<int>(std::count_if(
      gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(index), [&](const HandPicture::Gap& before) {
        const NeighbourGap& other = before.between;
        return other.axis == gap.axis && (other.from == gap.from || other.to == gap.to);
      }));
}

struct HandPainter {
  QPainter& painter;
  const BoardView& view;
  const QRectF& area;
  const QFontMetricsF metrics;
  const QPalette& palette;

  QPointF at(const FacePoint& place) const { return view.at(onBoard(place)); }
  QColor ink() const { return palette.color(QPalette::Text); }
  QColor lit() const { return palette.color(QPalette::Highlight); }

  // Words on a plate, kept inside the view.
  void words(const QPointF& middle, const QString& text, bool loud) const {
    const QRectF bounds = metrics.boundingRect(QRectF(), Qt::AlignCenter, text);
    QRectF plate(0, 0, bounds.width() + 2 * plateMargin, bounds.height() + plateMargin);
    plate.moveCenter(middle);
    plate.moveLeft(std::clamp(plate.left(), area.left(), std::max(area.left(), area.right() - plate.width())));
    plate.moveTop(std::clamp(plate.top(), area.top(), std::max(area.top(), area.bottom() - plate.height())));
    painter.setPen(QPen(loud ? lit() : palette.color(QPalette::Mid), 1));
    painter.setBrush(palette.color(QPalette::Base));
    painter.drawRoundedRect(plate, 2, 2);
    painter.setPen(ink());
    painter.drawText(plate, Qt::AlignCenter, text);
  }

  void line(const HandPicture::Line& each, const QPen& pen) const {
    const QPointF place = at({each.at, each.at});
    painter.setPen(pen);
    if (each.axis == Axis::U) painter.drawLine(QPointF(place.x(), area.top()), QPointF(place.x(), area.bottom()));
    if (each.axis == Axis::Z) painter.drawLine(QPointF(area.left(), place.y()), QPointF(area.right(), place.y()));
    if (each.name.isEmpty()) return;
    const double line = metrics.height() * 1.3;
    words(each.axis == Axis::U ? QPointF(place.x(), area.top() + line)
                               : QPointF(area.left() + metrics.horizontalAdvance(each.name) / 2 + line, place.y()),
          each.name, true);
  }

  QRectF rect(const FaceBox& box) const {
    return QRectF(at({box.left, box.top}), at({box.right, box.bottom})).normalized();
  }

  void box(const FaceBox& each) const {
    const QRectF shown = rect(each);
    painter.setPen(QPen(lit(), 2));
    painter.setBrush(Qt::NoBrush);
    if (shown.width() > 1 && shown.height() > 1) return painter.drawRect(shown);
    painter.drawLine(shown.center() - QPointF(8, 0), shown.center() + QPointF(8, 0));
    painter.drawLine(shown.center() - QPointF(0, 8), shown.center() + QPointF(0, 8));
  }

  // A dimension line with a tick at either end; `row`: how many stand on its side already.
  void gap(const HandPicture::Gap& each, int row) const {
    const NeighbourGap& between = each.between;
    const bool level = between.axis == Axis::U;
    const double aside = row * 1.4 * metrics.height();
    const QPointF shift = level ? QPointF(0, aside) : QPointF(aside, 0);
    const QPointF from =
        at(level ? FacePoint{between.from, between.across} : FacePoint{between.across, between.from}) + shift;
    const QPointF to =
        at(level ? FacePoint{between.to, between.across} : FacePoint{between.across, between.to}) + shift;
    const QPointF tick = level ? QPointF(0, tickSize) : QPointF(tickSize, 0);
    painter.setPen(QPen(ink(), 1));
    painter.drawLine(from, to);
    for (const QPointF& end : {from, to}) painter.drawLine(end - tick, end + tick);
    const QString text = QStringLiteral("%1").arg(each.length);
    const double room = level ? std::abs(to.x() - from.x()) : std::abs(to.y() - from.y());
    if (room > (level ? metrics.horizontalAdvance(text) : metrics.height()) + 4 * plateMargin)
      words((from + to) / 2, text, false);
  }

  void grip(const FacePoint& place) const {
    const QPointF middle = at(place);
    painter.setPen(QPen(lit(), 1.5));
    painter.setBrush(palette.color(QPalette::Base));
    painter.drawRect(QRectF(middle.x() - gripSize, middle.y() - gripSize, 2 * gripSize, 2 * gripSize));
  }

  void frame(const FaceBox& each) const {
    QColor wash = lit();
    wash.setAlphaF(0.12F);
    painter.setPen(QPen(lit(), 1, Qt::DashLine));
    painter.setBrush(wash);
    painter.drawRect(rect(each));
  }
};

}  // namespace

PaperPoint onBoard(const FacePoint& place) { return {place.u.inMillimetres(), -place.z.inMillimetres()}; }

FacePoint onFace(const PaperPoint& place) {
  return {Length::nanometres(std::llround(place.x * 1e6)), Length::nanometres(std::llround(-place.y * 1e6))};
}

void paintHand(QPainter& painter, const HandPicture& picture, const BoardView& view, const QRectF& area,
               const QFont& font, const QPalette& palette) {
  painter.setFont(font);
  painter.setRenderHint(QPainter::Antialiasing);
  const HandPainter hand{painter, view, area, QFontMetricsF(font), palette};
  if (picture.frame) hand.frame(*picture.frame);
  for (const HandPicture::Line& line : picture.lines) hand.line(line, QPen(hand.lit(), 2));
  for (const HandPicture::Line& line : picture.snapped) hand.line(line, QPen(hand.lit(), 1, Qt::DashLine));
  for (const FaceBox& box : picture.boxes) hand.box(box);
  for (std::size_t i = 0; i < picture.gaps.size(); ++i) hand.gap(picture.gaps[i], rowOf(picture.gaps, i));
  for (const FacePoint& grip : picture.grips) hand.grip(grip);
  if (!picture.reading.isEmpty())
    hand.words(hand.at(picture.readingAt) + QPointF(0, -2 * hand.metrics.height()), picture.reading, picture.refused);
}

}  // namespace ribwright
