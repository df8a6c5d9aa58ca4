#include "ui/printing/elevation_pdf.h"

#include <QBuffer>
#include <QByteArray>
#include <QHashFunctions>
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

QSizeF inPoints(const Page& page) {
  const PaperExtent extent = extentOf(page.paper);
  return {extent.width / 25.4 * 72, extent.height / 25.4 * 72};
}

// QPdfWriter writes its fonts in the order of a hash, which is another one in each process unless the seed is held.
class SteadyHashes {
 public:
  SteadyHashes() { QHashSeed::setDeterministicGlobalSeed(); }
  ~SteadyHashes() { QHashSeed::resetRandomGlobalSeed(); }
  SteadyHashes(const SteadyHashes&) = delete;
  SteadyHashes& operator=(const SteadyHashes&) = delete;
};

}  // namespace

std::string elevationPdf(const std::vector<Page>& pages, const std::string& title, const std::function<bool()>& goOn) {
  if (pages.empty()) return {};
  const SteadyHashes steady;
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    writer.setTitle(QString::fromStdString(title));
    writer.setCreator(QStringLiteral("Ribwright"));
    writer.setPageLayout(layoutOf(pages.front()));
    QPainter painter;
    if (!painter.begin(&writer)) return {};
    for (std::size_t i = 0; i < pages.size(); ++i) {
      if (goOn && !goOn()) return {};
      if (i > 0) {
        writer.setPageLayout(layoutOf(pages[i]));
        if (!writer.newPage()) return {};
      }
      painter.save();
      constexpr double perMillimetre = resolution / 25.4;
      painter.scale(perMillimetre, perMillimetre);
      paintDrawing(painter, pages[i].drawing, 25.4 / 96);
      painter.restore();
    }
    if (!painter.end()) return {};
  }
  std::vector<QSizeF> sizes;
  for (const Page& page : pages) sizes.push_back(inPoints(page));
  return finishedPdf(buffer.data(), sizes).toStdString();
}

}  // namespace ribwright
