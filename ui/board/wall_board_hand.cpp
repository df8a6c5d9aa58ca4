// What mouse, wheel and keys do to the board.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QWheelEvent>
#include <cmath>

#include "ui/board/wall_board.h"

namespace ribwright {

namespace {

constexpr double wheelStep = 1.25;  // for a notch
constexpr double panStep = 60;      // pixels
constexpr double dragFrom = 4;      // pixels: a click moves less

}  // namespace

bool WallBoard::event(QEvent* event) {
  if (event->type() == QEvent::NativeGesture) {
    const auto* gesture = static_cast<QNativeGestureEvent*>(event);
    if (gesture->gestureType() == Qt::ZoomNativeGesture) {
      zoomBy(1 + gesture->value(), gesture->position());
      return true;
    }
  }
  return QWidget::event(event);
}

void WallBoard::wheelEvent(QWheelEvent* event) {
  const int turned = event->angleDelta().y();
  if (turned != 0) zoomBy(std::pow(wheelStep, turned / 120.0), event->position());
  setHovered(partAt(event->position()));
  event->accept();
}

void WallBoard::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
  held_ = event->button();
  pressed_ = grabbed_ = event->position();
  dragging_ = false;
}

void WallBoard::mouseMoveEvent(QMouseEvent* event) {
  if (held_ == Qt::NoButton) return setHovered(partAt(event->position()));
  const QPointF moved = event->position() - pressed_;
  if (!dragging_ && std::hypot(moved.x(), moved.y()) < dragFrom) return;
  dragging_ = true;
  setCursor(Qt::ClosedHandCursor);
  pan(event->position() - grabbed_);
  grabbed_ = event->position();
}

void WallBoard::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != held_) return;
  const bool click = !dragging_ && held_ == Qt::LeftButton;
  held_ = Qt::NoButton;
  dragging_ = false;
  unsetCursor();
  if (click) choose(partAt(event->position()));
}

void WallBoard::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) fit();
}

void WallBoard::leaveEvent(QEvent*) { setHovered(std::nullopt); }

bool WallBoard::panByKey(int key) {
  switch (key) {
    case Qt::Key_Left:
      pan({panStep, 0});
      return true;
    case Qt::Key_Right:
      pan({-panStep, 0});
      return true;
    case Qt::Key_Up:
      pan({0, panStep});
      return true;
    case Qt::Key_Down:
      pan({0, -panStep});
      return true;
    default:
      return false;
  }
}

void WallBoard::keyPressEvent(QKeyEvent* event) {
  if (panByKey(event->key())) return;
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
      return fit();
    case Qt::Key_Escape:
      if (chosen_) return choose(std::nullopt);
      break;
    // Tab alone goes through the sheets: with Ctrl it leaves the board.
    case Qt::Key_Tab:
      QWidget::focusNextPrevChild(true);
      return;
    case Qt::Key_Backtab:
      QWidget::focusNextPrevChild(false);
      return;
    default:
      break;
  }
  QWidget::keyPressEvent(event);
}

bool WallBoard::focusNextPrevChild(bool next) {
  return chooseNextSheet(next ? 1 : -1) || QWidget::focusNextPrevChild(next);
}

}  // namespace ribwright
