#include "ui/panels/wall_tile.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/panels/mixed_colour.h"

namespace ribwright {

namespace {

constexpr int tileLines = 3;
constexpr double outlineLines = 2.2;  // height of the tallest wall's outline, in lines of text
constexpr int manySteps = 1000;

int marginOf(const QFontMetrics& metrics) { return metrics.height() / 3; }

QFont bold(QFont font) {
  font.setBold(true);
  return font;
}

}  // namespace

WallTile::WallTile(QWidget* parent) : QAbstractButton(parent) {
  setCheckable(true);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
}

void WallTile::setState(const WallState& state, double tallest) {
  state_ = state;
  tallest_ = tallest > 0 ? tallest : 1;
  setObjectName(QStringLiteral("wall-") + state_.letter);
  setAccessibleName(state_.title());
  setAccessibleDescription(state_.sentences());
  setToolTip(state_.sentences());
  updateGeometry();
  update();
}

int WallTile::arrowWidth() const { return state_.sheeted ? 2 * fontMetrics().height() : 0; }

QSize WallTile::minimumSizeHint() const {
  const QFontMetrics metrics = fontMetrics(), strong(bold(font()));
  const int widest = std::max({strong.horizontalAdvance(state_.letter) + 3 * metrics.averageCharWidth(),
                               arrowWidth() + metrics.horizontalAdvance(state_.sheetWords()),
                               metrics.horizontalAdvance(state_.signWords())});
  const int height = tileLines * metrics.lineSpacing() + qRound(outlineLines * metrics.height());
  const int margin = marginOf(metrics);
  return {widest + 2 * margin + 2, height + 3 * margin};
}

QSize WallTile::sizeHint() const { return minimumSizeHint(); }

QRect WallTile::inside() const {
  const int margin = marginOf(fontMetrics());
  return rect().adjusted(margin, margin, -margin, -margin);
}

void WallTile::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), palette().color(isChecked() ? QPalette::Base : QPalette::Window));
  const int thick = isChecked() ? 3 : 1;
  painter.setPen(QPen(isChecked() ? palette().color(QPalette::Highlight) : mixed(palette(), 35), thick));
  const double edge = thick / 2.0;
  painter.drawRect(QRectF(rect()).adjusted(edge, edge, -edge, -edge));
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DotLine));
    painter.drawRect(QRectF(rect()).adjusted(4.5, 4.5, -4.5, -4.5));
  }
  QRect upper = inside(), lower = inside();
  lower.setTop(lower.bottom() + 1 - tileLines * fontMetrics().lineSpacing());
  upper.setBottom(lower.top() - marginOf(fontMetrics()));
  paintOutline(painter, upper);
  paintWords(painter, lower);
}

void WallTile::paintOutline(QPainter& painter, const QRect& room) const {
  if (state_.width <= 0) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QTransform toRoom = QTransform::fromTranslate(room.left(), room.bottom() + 1)
                                .scale(room.width() / state_.width, -room.height() / tallest_);
  painter.setPen(QPen(palette().color(QPalette::Text), 1));
  painter.setBrush(mixed(palette(), 18));
  painter.drawPolygon(toRoom.map(state_.outline));
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette().color(QPalette::Base));
  for (const QRectF& opening : state_.openings) painter.drawRect(toRoom.mapRect(opening));
  painter.restore();
}

void WallTile::paintArrow(QPainter& painter, const QRectF& room) const {
  const double middle = room.center().y(), head = room.height() / 4;
  const bool right = state_.hand == Hand::LeftToRight;
  const double tail = right ? room.left() : room.right(), point = right ? room.right() : room.left();
  const double back = right ? point - 1.6 * head : point + 1.6 * head;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(palette().color(QPalette::Text), 1.5));
  painter.drawLine(QPointF(tail, middle), QPointF(back, middle));
  painter.setBrush(palette().color(QPalette::Text));
  painter.setPen(Qt::NoPen);
  painter.drawPolygon(QPolygonF{{point, middle}, {back, middle - head}, {back, middle + head}});
  painter.restore();
}

void WallTile::paintWords(QPainter& painter, const QRect& room) const {
  const int line = fontMetrics().lineSpacing();
  const QFontMetrics strong(bold(font()));
  QRect at(room.left(), room.top(), room.width(), line);
  painter.setPen(palette().color(QPalette::Text));
  painter.setFont(bold(font()));
  painter.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, state_.letter);
  painter.setFont(font());
  QRect name = at;
  name.setLeft(at.left() + strong.horizontalAdvance(state_.letter) + fontMetrics().averageCharWidth());
  painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter,
                   fontMetrics().elidedText(state_.name, Qt::ElideRight, name.width()));
  at.translate(0, line);
  painter.drawText(at.adjusted(arrowWidth(), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, state_.sheetWords());
  if (state_.sheeted) paintArrow(painter, QRectF(at.left(), at.top(), arrowWidth() - line * 0.4, line));
  at.translate(0, line);
  painter.drawText(at, Qt::AlignLeft | Qt::AlignVCenter, state_.signWords());
}

void WallTile::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Up:
      return emit stepAsked(-1);
    case Qt::Key_Right:
    case Qt::Key_Down:
      return emit stepAsked(1);
    case Qt::Key_Home:
      return emit stepAsked(-manySteps);
    case Qt::Key_End:
      return emit stepAsked(manySteps);
    default:
      QAbstractButton::keyPressEvent(event);
  }
}

}  // namespace ribwright
