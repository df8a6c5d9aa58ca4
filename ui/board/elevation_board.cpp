#include "ui/board/elevation_board.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/painting/page_painter.h"

namespace ribwright {

namespace {

constexpr double betweenPages = 12;  // mm
constexpr double roundPage = 12;     // pixels left free round a fitted page
constexpr double leastZoom = 0.1;    // pixels per mm
constexpr double mostZoom = 200;
constexpr double zoomStep = 1.25;
constexpr double panStep = 60;  // pixels

}  // namespace

ElevationBoard::ElevationBoard(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(200, 150);
  setCursor(Qt::OpenHandCursor);
  setAccessibleName(tr("Elevation"));
  setAccessibleDescription(
      tr("Pages of the chosen wall. Plus and minus zoom, arrow keys move, Page Up and Page Down turn pages, 0 fits the "
         "page."));
}

void ElevationBoard::setPages(std::vector<Page> pages) {
  pages_ = std::move(pages);
  lefts_.clear();
  double left = 0;
  for (const Page& page : pages_) {
    lefts_.push_back(left);
    left += extentOf(page.paper).width + betweenPages;
  }
  current_ = 0;
  fit();
}

QRectF ElevationBoard::pageOnScreen(int page) const {
  const auto index = static_cast<std::size_t>(page);
  const PaperExtent extent = extentOf(pages_[index].paper);
  return {origin_.x() + lefts_[index] * zoom_, origin_.y(), extent.width * zoom_, extent.height * zoom_};
}

void ElevationBoard::fit() {
  fitted_ = true;
  if (!pages_.empty()) {
    const PaperExtent extent = extentOf(pages_[static_cast<std::size_t>(current_)].paper);
    const double across = (width() - 2 * roundPage) / extent.width, down = (height() - 2 * roundPage) / extent.height;
    zoom_ = std::clamp(std::min(across, down), leastZoom, mostZoom);
    const double left = lefts_[static_cast<std::size_t>(current_)];
    origin_ = {(width() - extent.width * zoom_) / 2 - left * zoom_, (height() - extent.height * zoom_) / 2};
  }
  update();
  emit viewChanged();
}

void ElevationBoard::showPage(int page) {
  if (pages_.empty()) return;
  current_ = std::clamp(page, 0, pageCount() - 1);
  fit();
}

void ElevationBoard::zoomBy(double factor, const QPointF& pixel) {
  const double zoomed = std::clamp(zoom_ * factor, leastZoom, mostZoom);
  origin_ = pixel - (pixel - origin_) * (zoomed / zoom_);
  zoom_ = zoomed;
  fitted_ = false;
  update();
  emit viewChanged();
}

void ElevationBoard::zoomIn() { zoomBy(zoomStep, QRectF(rect()).center()); }

void ElevationBoard::zoomOut() { zoomBy(1 / zoomStep, QRectF(rect()).center()); }

void ElevationBoard::pan(const QPointF& pixels) {
  origin_ += pixels;
  fitted_ = false;
  update();
  emit viewChanged();
}

void ElevationBoard::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.fillRect(event->rect(), palette().color(QPalette::Dark));
  painter.setRenderHint(QPainter::Antialiasing);
  for (int i = 0; i < pageCount(); ++i) {
    const QRectF page = pageOnScreen(i);
    if (!page.intersects(QRectF(event->rect()))) continue;
    painter.fillRect(page, Qt::white);
    painter.save();
    painter.translate(page.topLeft());
    painter.scale(zoom_, zoom_);
    paintDrawing(painter, pages_[static_cast<std::size_t>(i)].drawing, 1 / zoom_);
    painter.restore();
  }
  if (hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

void ElevationBoard::resizeEvent(QResizeEvent*) {
  if (fitted_) fit();
}

void ElevationBoard::wheelEvent(QWheelEvent* event) {
  const int turned = event->angleDelta().y();
  if (turned != 0) zoomBy(std::pow(zoomStep, turned / 120.0), event->position());
  event->accept();
}

void ElevationBoard::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
  panning_ = true;
  grabbed_ = event->position();
  setCursor(Qt::ClosedHandCursor);
}

void ElevationBoard::mouseMoveEvent(QMouseEvent* event) {
  if (!panning_) return;
  pan(event->position() - grabbed_);
  grabbed_ = event->position();
}

void ElevationBoard::mouseReleaseEvent(QMouseEvent*) {
  panning_ = false;
  setCursor(Qt::OpenHandCursor);
}

void ElevationBoard::mouseDoubleClickEvent(QMouseEvent* event) {
  for (int i = 0; i < pageCount(); ++i) {
    if (pageOnScreen(i).contains(event->position())) return showPage(i);
  }
  fit();
}

void ElevationBoard::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoomIn();
    case Qt::Key_Minus:
      return zoomOut();
    case Qt::Key_0:
      return fit();
    case Qt::Key_PageDown:
      return showPage(current_ + 1);
    case Qt::Key_PageUp:
      return showPage(current_ - 1);
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
