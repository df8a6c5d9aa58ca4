#include "ui/printing/pages_pdf.h"

#include <QBuffer>
#include <QByteArray>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "ui/painting/page_painter.h"
#include "ui/printing/pdf_finish.h"

namespace ribwright {

namespace {

constexpr int resolution = 1200;

QPageLayout layoutOf(const Page& page) {
  const PaperExtent extent = extentOf(page.paper);
  const QPageSize size(QSizeF(extent.width, extent.height), QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
  return QPageLayout(size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0));
}

void paintPage(QPainter& painter, const Page& page) {
  painter.save();
  constexpr double perMillimetre = resolution / 25.4;
  painter.scale(perMillimetre, perMillimetre);
  paintDrawing(painter, page.drawing, 25.4 / 96);
  painter.restore();
}

bool paintPages(QPdfWriter& writer, const std::vector<Page>& pages, const std::function<bool()>& goOn) {
  writer.setResolution(resolution);
  writer.setPageLayout(layoutOf(pages.front()));
  QPainter painter;
  if (!painter.begin(&writer)) return false;
  for (const Page& page : pages) {
    if (goOn && !goOn()) return false;
    if (&page != &pages.front() && !(writer.setPageLayout(layoutOf(page)) && writer.newPage())) return false;
    paintPage(painter, page);
  }
  return painter.end();
}

}  // namespace

std::string pagesPdf(const std::vector<Page>& pages, const PdfDocument& document, const std::function<bool()>& goOn) {
  if (pages.empty()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  bool painted = false;
  {
    QPdfWriter writer(&buffer);
    painted = paintPages(writer, pages, goOn);
  }
  return painted ? finishedPdf(buffer.data().toStdString(), pages, document) : std::string();
}

}  // namespace ribwright
