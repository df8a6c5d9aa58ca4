#include "ui/printing/pages_pdf.h"

#include <QBuffer>
#include <QByteArray>
#include <QPdfWriter>

#include "ui/printing/paged_device.h"
#include "ui/printing/pdf_finish.h"

namespace ribwright {

namespace {

constexpr int resolution = 1200;

std::vector<PdfLeaf> leavesOf(const std::vector<Page>& pages) {
  std::vector<PdfLeaf> leaves;
  for (const Page& page : pages) leaves.push_back({extentOf(page.paper), page.heading, page.title});
  return leaves;
}

}  // namespace

std::string pagesPdf(const std::vector<Page>& pages, const PdfDocument& document, const std::function<bool()>& goOn) {
  if (pages.empty()) return {};
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  bool painted = false;
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    painted = paintPages(writer, resolution, pages, asItIs, goOn);
  }
  return painted ? finishedPdf(buffer.data().toStdString(), leavesOf(pages), document) : std::string();
}

}  // namespace ribwright
