#include "ui/board/elevation_board.h"

#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <algorithm>

#include "ui/painting/page_painter.h"

namespace ribwright {

namespace {

constexpr double betweenPages = 12;    // mm
constexpr double roundPage = 12;       // pixels left free round a fitted page
constexpr double leastPageZoom = 0.1;  // pixels per mm
constexpr double mostPageZoom = 200;

}  // namespace

ElevationBoard::ElevationBoard(QWidget* parent)
    : ZoomedBoard({leastPageZoom, mostPageZoom}, Qt::OpenHandCursor, parent) {
  setMinimumSize(200, 150);
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
  return view().at(Box{lefts_[index], 0, lefts_[index] + extent.width, extent.height});
}

void ElevationBoard::fit() {
  BoardView next = view();
  if (!pages_.empty()) {
    const PaperExtent extent = extentOf(pages_[static_cast<std::size_t>(current_)].paper);
    const double across = (width() - 2 * roundPage) / extent.width, down = (height() - 2 * roundPage) / extent.height;
    next.zoom = std::clamp(std::min(across, down), leastPageZoom, mostPageZoom);
    const QPointF middle(lefts_[static_cast<std::size_t>(current_)] + extent.width / 2, extent.height / 2);
    next.origin = viewRect().center() - middle * next.zoom;
  }
  setView(next, true);
}

void ElevationBoard::showPage(int page) {
  if (pages_.empty()) return;
  current_ = std::clamp(page, 0, pageCount() - 1);
  fit();
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
    painter.scale(zoom(), zoom());
    paintDrawing(painter, pages_[static_cast<std::size_t>(i)].drawing, 1 / zoom());
    painter.restore();
  }
  paintFocus(painter);
}

void ElevationBoard::doubleClicked(const QPointF& pixel) {
  for (int i = 0; i < pageCount(); ++i) {
    if (pageOnScreen(i).contains(pixel)) return showPage(i);
  }
  fit();
}

void ElevationBoard::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_PageDown:
      return showPage(current_ + 1);
    case Qt::Key_PageUp:
      return showPage(current_ - 1);
    default:
      ZoomedBoard::keyPressEvent(event);
  }
}

}  // namespace ribwright
