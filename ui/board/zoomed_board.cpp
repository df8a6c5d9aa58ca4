#include "ui/board/zoomed_board.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <utility>

namespace ribwright {

namespace {

constexpr double zoomStep = 1.25;  // for a key and for a notch of the wheel
constexpr double panStep = 60;     // pixels
constexpr double dragFrom = 4;     // pixels: a click moves less

}  // namespace

ZoomedBoard::ZoomedBoard(const ZoomLimits& limits, Qt::CursorShape cursor, QWidget* parent)
    : QWidget(parent), limits_(limits), cursor_(cursor) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(cursor_);
}

void ZoomedBoard::setView(const BoardView& view, bool fitted) {
  view_ = view;
  fitted_ = fitted;
  update();
  emit viewChanged();
}

void ZoomedBoard::zoomBy(double factor, const QPointF& pixel) {
  const double zoom = std::clamp(view_.zoom * factor, limits_.least, limits_.most);
  setView({pixel - (pixel - view_.origin) * (zoom / view_.zoom), zoom}, false);
}

void ZoomedBoard::pan(const QPointF& pixels) { setView({view_.origin + pixels, view_.zoom}, false); }

void ZoomedBoard::zoomIn() { zoomBy(zoomStep, viewRect().center()); }

void ZoomedBoard::zoomOut() { zoomBy(1 / zoomStep, viewRect().center()); }

void ZoomedBoard::paintFocus(QPainter& painter) const {
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

bool ZoomedBoard::event(QEvent* event) {
  if (event->type() == QEvent::NativeGesture) {
    const auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture) {
      zoomBy(1 + gesture->value(), gesture->position());
      return true;
    }
  }
  return QWidget::event(event);
}

void ZoomedBoard::resizeEvent(QResizeEvent*) {
  if (fitted_) fit();
}

void ZoomedBoard::leaveEvent(QEvent*) { pointedAt(std::nullopt); }

void ZoomedBoard::wheelEvent(QWheelEvent* event) {
  const int turned = event->angleDelta().y();
  if (turned != 0) zoomBy(std::pow(zoomStep, turned / 120.0), event->position());
  pointedAt(event->position());
  event->accept();
}

void ZoomedBoard::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
  held_ = event->button();
  pressed_ = grabbed_ = event->position();
  dragging_ = false;
  grabbing_ = held_ == Qt::LeftButton && grabs(event->position(), event->modifiers());
}

void ZoomedBoard::mouseMoveEvent(QMouseEvent* event) {
  if (grabbing_) return draggedTo(event->position(), event->modifiers());
  if (held_ == Qt::NoButton) {
    setCursor(cursorAt(event->position()));
    return pointedAt(event->position());
  }
  const QPointF moved = event->position() - pressed_;
  if (!dragging_ && std::hypot(moved.x(), moved.y()) < dragFrom) return;
  dragging_ = true;
  setCursor(Qt::ClosedHandCursor);
  pan(event->position() - grabbed_);
  grabbed_ = event->position();
}

void ZoomedBoard::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != held_) return;
  const bool click = !dragging_ && held_ == Qt::LeftButton;
  held_ = Qt::NoButton;
  dragging_ = false;
  setCursor(cursorAt(event->position()));
  if (std::exchange(grabbing_, false)) return released(event->position(), event->modifiers());
  if (click) clicked(event->position(), event->modifiers());
}

void ZoomedBoard::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) doubleClicked(event->position());
}

void ZoomedBoard::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
      return fit();
    case Qt::Key_Left:
      return pan({panStep, 0});
    case Qt::Key_Right:
      return pan({-panStep, 0});
    case Qt::Key_Up:
      return pan({0, panStep});
    case Qt::Key_Down:
      return pan({0, -panStep});
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace ribwright
