// Elevations as a PDF, whole, against a bare QPdfWriter that is given the same lines, areas and letters ready-made and
// leaves them unfinished: time and size. Prints ratios; judges nothing.
#include <QBuffer>
#include <QGlyphRun>
#include <QGuiApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <cstdio>

#include "core/drawing/elevation.h"
#include "core/drawing/letter_widths.h"
#include "core/drawing/text_extent.h"
#include "core/job/job_file.h"
#include "tests/bench/large_building.h"
#include "ui/painting/paper_font.h"
#include "ui/printing/pages_pdf.h"

using namespace ribwright;

namespace {

constexpr int resolution = 1200;
constexpr double oversize = 32;  // letters are laid out in steps of 1/64 unit

struct BareLine {
  QPolygonF points;
  bool closed;
  QPen pen;
};
struct BareArea {
  QPainterPath path;
  QColor ink;
};
struct BareText {
  QGlyphRun letters;
  QTransform place;
};
using BareItem = std::variant<BareLine, BareArea, BareText>;
using BarePage = std::vector<BareItem>;

QPolygonF polygon(const std::vector<PaperPoint>& points) {
  QPolygonF made;
  for (const PaperPoint& point : points) made << QPointF(point.x, point.y);
  return made;
}

BareItem bare(const Stroke& stroke) {
  const double width = stroke.width.size;
  QPen pen(Qt::black, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
  if (stroke.dash == Dash::Dashed) pen.setDashPattern({3 / width, 1.5 / width});
  if (stroke.dash == Dash::Chain) pen.setDashPattern({8 / width, 1.5 / width, 1 / width, 1.5 / width});
  return BareLine{polygon(stroke.points), stroke.closed, pen};
}

BareItem bare(const Fill& fill) {
  BareArea area{{}, fill.ink == Ink::Black ? Qt::black : Qt::white};
  for (const auto& ring : fill.rings) {
    area.path.addPolygon(polygon(ring));
    area.path.closeSubpath();
  }
  return area;
}

BareItem bare(const Text& text) {
  const double em = emOf(text.height);
  const QRawFont font = paperFont(em * oversize, text.bold);
  QList<QPointF> places;
  double along = text.anchor == TextAnchor::Start ? 0 : widthOf(text) * (text.anchor == TextAnchor::Middle ? -0.5 : -1);
  for (const char32_t letter : lettersOf(text.words)) {
    places << QPointF(along * oversize, 0);
    along += em * advanceOf(letter, text.bold) / unitsOfEm;
  }
  BareText made;
  made.letters.setRawFont(font);
  made.letters.setGlyphIndexes(font.glyphIndexesForString(QString::fromStdString(drawnWords(text.words))));
  made.letters.setPositions(places);
  made.place.translate(text.at.x, text.at.y).rotate(-text.turn).scale(1 / oversize, 1 / oversize);
  return made;
}

void draw(QPainter& painter, const BareLine& line) {
  painter.setPen(line.pen);
  line.closed ? painter.drawPolygon(line.points) : painter.drawPolyline(line.points);
}
void draw(QPainter& painter, const BareArea& area) { painter.fillPath(area.path, area.ink); }
void draw(QPainter& painter, const BareText& text) {
  painter.save();
  painter.setTransform(text.place, true);
  painter.setPen(Qt::black);
  painter.drawGlyphRun(QPointF(0, 0), text.letters);
  painter.restore();
}

QByteArray barePdf(const std::vector<BarePage>& pages, const PaperExtent& extent) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    writer.setPageSize(QPageSize(QSizeF(extent.width, extent.height), QPageSize::Millimeter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter(&writer);
    for (const BarePage& page : pages) {
      if (&page != &pages.front()) writer.newPage();
      painter.save();
      painter.scale(resolution / 25.4, resolution / 25.4);
      for (const BareItem& item : page) std::visit([&](const auto& it) { draw(painter, it); }, item);
      painter.restore();
    }
  }
  return buffer.data();
}

void compare(const char* what, const std::vector<Page>& pages, int times) {
  std::vector<BarePage> ready;
  std::size_t items = 0;
  for (const Page& page : pages) {
    BarePage made;
    for (const Item& item : page.drawing.items)
      made.push_back(std::visit([](const auto& it) { return bare(it); }, item));
    items += made.size();
    ready.push_back(std::move(made));
  }
  std::string ours;
  QByteArray theirs;
  double our = 1e9, their = 1e9;
  for (int i = 0; i < times; ++i) {  // in turn, so that a busy machine is busy for both
    our = std::min(our, bench::seconds([&] { ours = pagesPdf(pages, {"Bench", "2026-03-02", "en"}); }, 1));
    their = std::min(their, bench::seconds([&] { theirs = barePdf(ready, extentOf(pages.front().paper)); }, 1));
  }
  const auto size = static_cast<double>(ours.size()), bareSize = static_cast<double>(theirs.size());
  std::printf("%s: %zu pages, %zu items\n", what, pages.size(), items);
  std::printf("  pagesPdf, finished   %8.1f ms  %7.0f kB\n", our * 1e3, size / 1e3);
  std::printf("  QPdfWriter, bare     %8.1f ms  %7.0f kB\n", their * 1e3, bareSize / 1e3);
  std::printf("  ratio                %8.2f     %7.2f\n", our / their, size / bareSize);
}

}  // namespace

int main(int count, char** words) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(count, words);
  const auto warehouse = loadJob(RIBWRIGHT_ROOT "/sample-jobs/doe-warehouse.json");
  if (!warehouse) return 1;
  compare("DOE warehouse, Letter", elevationPages(warehouse.value(), plan(warehouse.value()), PaperSize::Letter), 15);
  const Job large = bench::building(Length::feet(1002), 60);
  compare("1,002 x 400.8 ft, Tabloid", elevationPages(large, plan(large), PaperSize::Tabloid), 7);
}
