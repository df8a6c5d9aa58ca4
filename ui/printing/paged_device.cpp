#include "ui/printing/paged_device.h"

#include <QPageSize>
#include <QPainter>

#include "ui/painting/page_painter.h"

namespace ribwright {

namespace {

QPageSize::PageSizeId idOf(PaperSize paper) {
  switch (paper) {
    case PaperSize::Letter:
      return QPageSize::Letter;
    case PaperSize::Tabloid:
      return QPageSize::Tabloid;
    case PaperSize::A4:
      return QPageSize::A4;
    case PaperSize::A3:
      return QPageSize::A3;
  }
  return QPageSize::A4;
}

void paintPage(QPainter& painter, int resolution, const Page& page) {
  painter.save();
  const double perMillimetre = resolution / 25.4;
  painter.scale(perMillimetre, perMillimetre);
  paintDrawing(painter, page.drawing, 25.4 / 96);
  painter.restore();
}

}  // namespace

QPageLayout asItIs(const Page& page) {
  const PaperExtent extent = extentOf(page.paper);
  const QPageSize size(QSizeF(extent.width, extent.height), QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
  return QPageLayout(size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0));
}

QPageLayout lying(const Page& page) {
  return QPageLayout(QPageSize(idOf(page.paper)), QPageLayout::Landscape, QMarginsF(0, 0, 0, 0));
}

bool paintPages(QPagedPaintDevice& device, int resolution, const std::vector<Page>& pages,
                QPageLayout (*layoutOf)(const Page&), const std::function<bool()>& goOn) {
  if (pages.empty() || !device.setPageLayout(layoutOf(pages.front()))) return false;
  QPainter painter;
  if (!painter.begin(&device)) return false;
  for (const Page& page : pages) {
    if (goOn && !goOn()) return false;
    if (&page != &pages.front() && !(device.setPageLayout(layoutOf(page)) && device.newPage())) return false;
    paintPage(painter, resolution, page);
  }
  return painter.end();
}

}  // namespace ribwright
