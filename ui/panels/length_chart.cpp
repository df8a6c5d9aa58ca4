#include "ui/panels/length_chart.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/panels/mixed_colour.h"

namespace ribwright {

LengthChart::LengthChart(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setToolTip(tr("Steel bought against the number of lengths. Click, or use the arrow keys, to choose how many."));
}

void LengthChart::setChoices(std::vector<LengthChoice> choices, int most, std::function<QString(Length)> say) {
  choices_ = std::move(choices);
  most_ = most;
  say_ = std::move(say);
  if (!choices_.empty()) {
    const LengthChoice& choice = choices_[static_cast<std::size_t>(current() - 1)];
    setAccessibleDescription(tr("Number of lengths %1: %2").arg(QString::number(current()), say_(choice.bought)));
  }
  update();
}

QSize LengthChart::sizeHint() const { return {32 * fontMetrics().averageCharWidth(), 10 * fontMetrics().height()}; }
QSize LengthChart::minimumSizeHint() const {
  return {20 * fontMetrics().averageCharWidth(), 10 * fontMetrics().height()};
}

int LengthChart::current() const { return most_ == 0 ? count() : std::min(most_, count()); }

// Above: what the greatest amount is; below: numbers and what they count.
QRect LengthChart::plot() const {
  const int line = fontMetrics().height(), side = 2 * fontMetrics().averageCharWidth();
  return rect().adjusted(side, 2 * line + line / 2, -side, -2 * line - line / 2);
}

QPoint LengthChart::placeOf(int lengths) const {
  const QRect area = plot();
  const int x = area.left() + (2 * lengths - 1) * area.width() / (2 * std::max(1, count()));
  if (choices_.empty()) return {x, area.bottom()};
  return {x, heightOf(choices_[static_cast<std::size_t>(lengths - 1)].bought, area)};
}

// From no more than cut to length at the foot to what one length buys at the top.
int LengthChart::heightOf(Length bought, const QRect& area) const {
  const Length least = choices_.back().bought, greatest = choices_.front().bought;
  if (greatest == least) return area.bottom();
  return area.bottom() - static_cast<int>((bought - least).inMetres() / (greatest - least).inMetres() * area.height());
}

void LengthChart::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
  }
  if (choices_.empty()) {
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap, tr("No sheets of this kind are made to length."));
    return;
  }
  const QRect area = plot();
  drawAxes(painter, area);
  drawSteps(painter, area);
}

void LengthChart::drawAxes(QPainter& painter, const QRect& area) const {
  const QFontMetrics& font = fontMetrics();
  painter.setPen(palette().color(QPalette::Text));
  const QRect head(area.left(), 2, area.width(), font.height());
  painter.drawText(head, Qt::AlignLeft, tr("one length %1").arg(say_(choices_.front().bought)));
  painter.drawText(head.translated(0, font.height()), Qt::AlignRight, tr("least %1").arg(say_(choices_.back().bought)));
  painter.drawText(QRect(area.left(), height() - font.height() - 2, area.width(), font.height()), Qt::AlignHCenter,
                   tr("number of lengths"));
  painter.setPen(mixed(palette(), 55));
  painter.drawLine(area.bottomLeft(), area.bottomRight());
  const int room = font.horizontalAdvance(QString::number(count())) + font.averageCharWidth();
  const int step = std::max(1, (room * count() + area.width() - 1) / std::max(1, area.width()));
  int last = -room;
  for (int k = 1; k <= count(); ++k) {
    const bool marked = k == current();
    const int x = placeOf(k).x();
    if (!marked && ((k - 1) % step != 0 || std::abs(x - placeOf(current()).x()) < room || x - last < room)) continue;
    if (!marked) last = x;
    QFont own = painter.font();
    own.setBold(marked);
    painter.setFont(own);
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QRect(x - room, area.bottom() + 2, 2 * room, font.height()), Qt::AlignHCenter, QString::number(k));
  }
}

void LengthChart::drawSteps(QPainter& painter, const QRect& area) const {
  const double wide = double(area.width()) / count();
  for (int k = 1; k <= count(); ++k) {
    const bool marked = k == current();
    const int top = placeOf(k).y();
    const QRectF bar(area.left() + (k - 1) * wide + wide * 0.12, top, wide * 0.76, area.bottom() - top + 1);
    painter.setPen(QPen(palette().color(QPalette::Text), marked ? 2 : 1));
    painter.setBrush(marked ? QBrush(palette().color(QPalette::Text)) : QBrush(mixed(palette(), 20)));
    painter.drawRect(bar);
  }
  // The chosen number, also where its bar has no height.
  const QPoint at = placeOf(current());
  painter.setPen(QPen(palette().color(QPalette::Text), 2));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawEllipse(QPointF(at), 5, 5);
}

void LengthChart::pick(int lengths) {
  lengths = std::clamp(lengths, 1, std::max(1, count()));
  if (!choices_.empty() && (lengths != current() || most_ > count())) emit picked(lengths == count() ? 0 : lengths);
}

void LengthChart::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  const QRect area = plot();
  if (event->button() == Qt::LeftButton && area.width() > 0)
    pick(1 + (static_cast<int>(event->position().x()) - area.left()) * count() / area.width());
}

void LengthChart::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
      return pick(current() - 1);
    case Qt::Key_Right:
    case Qt::Key_Up:
      return pick(current() + 1);
    case Qt::Key_Home:
      return pick(1);
    case Qt::Key_End:
      return pick(count());
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace ribwright
