// Elevations of every sample job as PDF and SVG, measured by other programs: poppler and Qt's SVG renderer.
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QtTest>

#include "core/drawing/box.h"
#include "core/drawing/page_frame.h"
#include "core/output/svg.h"
#include "tests/ui/paper_samples.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;
using namespace ribwright::papertest;

namespace {

constexpr int dotsPerMillimetre = 20;

// Outer edge of the scale bar's outline, in mm.
std::optional<Box> scaleBar(const Page& page) {
  for (const Item& item : page.drawing.items) {
    const Stroke* stroke = std::get_if<Stroke>(&item);
    if (!stroke || !stroke->closed || stroke->points.size() != 4) continue;
    const Box box = Box{stroke->points[0].x, stroke->points[0].y, stroke->points[2].x, stroke->points[2].y}.grown(
        stroke->width.size / 2);
    if (box.height() < 3 && box.bottom > frameBox(page.paper).bottom - 10) return box;
  }
  return std::nullopt;
}

// The part of the page round its scale bar that is looked at, in whole mm.
QRect around(const Box& bar) {
  return QRectF(bar.left - 6, bar.top - 3, bar.width() + 12, bar.height() + 6).toAlignedRect();
}

// Length of the dark run along the lower line of the bar, in mm, in a picture of the part `shown`.
double darkRun(const QImage& image, const QRect& shown, const Box& bar) {
  const int y = qRound((bar.bottom - 0.17 - shown.top()) * dotsPerMillimetre);
  const auto dark = [&](int x) { return qGray(image.pixel(x, y)) < 128; };
  int left = qRound((bar.middle().x - shown.left()) * dotsPerMillimetre), right = left;
  if (!dark(left)) return 0;
  while (left > 0 && dark(left - 1)) --left;
  while (right + 1 < image.width() && dark(right + 1)) ++right;
  return double(right - left + 1) / dotsPerMillimetre;
}

QImage svgPicture(const Page& page, const QRect& shown) {
  QSvgRenderer renderer(QByteArray::fromStdString(svgText(page)));
  const PaperExtent extent = extentOf(page.paper);
  QImage image(shown.size() * dotsPerMillimetre, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.translate(-shown.topLeft() * dotsPerMillimetre);
  renderer.render(&painter, QRectF(0, 0, extent.width * dotsPerMillimetre, extent.height * dotsPerMillimetre));
  return image;
}

QImage pdfPicture(const QString& pdf, const QString& picture, const QRect& shown) {
  const auto pixels = [](int mm) { return QString::number(mm * dotsPerMillimetre); };
  told("pdftoppm", {"-r", QString::number(dotsPerMillimetre * 25.4), "-f", "1", "-l", "1", "-x", pixels(shown.left()),
                    "-y", pixels(shown.top()), "-W", pixels(shown.width()), "-H", pixels(shown.height()), "-singlefile",
                    "-gray", "-png", pdf, picture});
  return QImage(picture + ".png");
}

// Middles of dots, the marks of structural screws: black rings of eight corners.
std::vector<PaperPoint> dotsOn(const Page& page) {
  std::vector<PaperPoint> dots;
  for (const Item& item : page.drawing.items) {
    const Fill* fill = std::get_if<Fill>(&item);
    if (!fill || fill->ink != Ink::Black) continue;
    for (const auto& ring : fill->rings) {
      if (ring.size() == 8) dots.push_back({(ring[0].x + ring[4].x) / 2, (ring[0].y + ring[4].y) / 2});
    }
  }
  return dots;
}

// Of `dots` those in the part `shown` whose middle is not dark in its picture.
int missingDots(const QImage& image, const QRect& shown, const std::vector<PaperPoint>& dots, int& seen) {
  int missing = 0;
  for (const PaperPoint& dot : dots) {
    if (!QRectF(shown).adjusted(1, 1, -1, -1).contains(dot.x, dot.y)) continue;
    const auto pixel = [](double at) { return qFloor(at * dotsPerMillimetre); };
    missing += qGray(image.pixel(pixel(dot.x - shown.left()), pixel(dot.y - shown.top()))) < 128 ? 0 : 1;
    ++seen;
  }
  return missing;
}

// A page with nothing on it but its frame.
Page pageAt(const DrawingScale& scale, UnitSystem units, PaperSize paper) {
  Job job;
  job.name = "Bare page";
  job.units = units;
  PageFrame frame;
  frame.paper = paper;
  frame.job = &job;
  frame.words = &Words::of("en");
  PageTitle title;
  title.scale = scale;
  Sketch sketch;
  drawFrame(sketch, frame, title);
  return {paper, "", "1:" + std::to_string(scale.below) + " on " + std::string(nameOf(paper)),
          std::move(sketch.drawing)};
}

// The warehouse with its long sides 1002 ft long: 334 sheets each.
Job longHall() {
  Job job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/doe-warehouse.json").value();
  for (PlanPoint& corner : job.building.outline) {
    if (corner.x > Length()) corner.x = Length::feet(1002);
  }
  return job;
}

}  // namespace

class ElevationPdfTest : public QObject {
  Q_OBJECT

 private slots:
  void theScaleBarMeasuresTrueInPdfAndSvg();
  void theScaleBarMeasuresTrueAtEveryScaleOnEveryPaper();
  void screwsAreMarkedInPdfAndSvg();
  void pagesWithScrewsSayThatNothingIsDrilledByThem();
  void aWallOf334SheetsStaysSmall();

 private:
  QString written(const std::vector<Page>& pages) { return writtenPdf(folder_, pages); }

  void barMeasuresTrue(const Page& page, UnitSystem units) {
    const double length = units == UnitSystem::Millimetres ? 100 : 76.2;
    const auto bar = scaleBar(page);
    QVERIFY2(bar, page.title.c_str());
    const QRect shown = around(*bar);
    const QImage pdf = pdfPicture(written({page}), folder_.filePath("bar"), shown);
    QVERIFY(!pdf.isNull());
    // To a pixel of the picture.
    QVERIFY2(qAbs(darkRun(pdf, shown, *bar) - length) <= 0.06, page.title.c_str());
    QVERIFY2(qAbs(darkRun(svgPicture(page, shown), shown, *bar) - length) <= 0.06, page.title.c_str());
  }

  QTemporaryDir folder_;
  std::vector<Sample> samples_ = paperSamples();
};

void ElevationPdfTest::theScaleBarMeasuresTrueInPdfAndSvg() {
  for (const Sample& sample : samples_) {
    for (const PaperSize paper : papers)
      barMeasuresTrue(elevationPages(sample.job, sample.plan, paper).front(), sample.job.units);
  }
}

// 100 mm in metric jobs, 3 in in others.
void ElevationPdfTest::theScaleBarMeasuresTrueAtEveryScaleOnEveryPaper() {
  for (const UnitSystem units : {UnitSystem::FeetInches, UnitSystem::Millimetres}) {
    std::vector<DrawingScale> scales = usualScales(units);
    QCOMPARE(scales.size(), std::size_t(7));
    for (const DrawingScale& small : smallScales(units)) scales.push_back(small);
    for (const PaperSize paper : papers) {
      for (const DrawingScale& scale : scales) barMeasuresTrue(pageAt(scale, units, paper), units);
    }
  }
}

void ElevationPdfTest::screwsAreMarkedInPdfAndSvg() {
  for (const Sample& sample : samples_) {
    const auto pages = elevationPages(sample.job, sample.plan, PaperSize::A3);
    const std::vector<PaperPoint> dots = dotsOn(pages.front());
    QVERIFY2(dots.size() > 20, qPrintable(sample.name));
    const PaperPoint middle = dots[dots.size() / 2];
    const QRect shown = QRectF(middle.x - 20, middle.y - 20, 40, 40).toAlignedRect();
    int seen = 0;
    const QImage pdf = pdfPicture(written(pages), folder_.filePath("dots"), shown);
    QCOMPARE(missingDots(pdf, shown, dots, seen), 0);
    QCOMPARE(missingDots(svgPicture(pages.front(), shown), shown, dots, seen), 0);
    QVERIFY(seen >= 4);
  }
}

void ElevationPdfTest::pagesWithScrewsSayThatNothingIsDrilledByThem() {
  for (const Sample& sample : samples_) {
    const auto pages = elevationPages(sample.job, sample.plan, PaperSize::Letter);
    const QString path = written(pages);
    for (std::size_t i = 0; i < pages.size(); ++i) {
      const QString number = QString::number(i + 1);
      const QString text = QString::fromUtf8(told("pdftotext", {"-f", number, "-l", number, path, "-"}));
      const int said = int(text.count("screw heights from plan: not for drilling"));
      QVERIFY2(said == (dotsOn(pages[i]).empty() ? 0 : 1), pages[i].title.c_str());
    }
  }
}

// Two walls of 334 sheets and two of 110, some 27,000 screws.
void ElevationPdfTest::aWallOf334SheetsStaysSmall() {
  const Job job = longHall();
  const Plan made = plan(job);
  QVERIFY(made.walls.front()->layout.pieces.size() >= 334);
  QVERIFY(made.walls.front()->holes.holes.size() > 5000);
  const std::string pdf = pagesPdf(elevationPages(job, made, PaperSize::Letter), {"Sample", "", ""});
  QVERIFY(!pdf.empty());
  QVERIFY2(pdf.size() < 1'500'000, qPrintable(QString::number(pdf.size())));
}

WINDOW_TEST(ElevationPdfTest)
#include "elevation_pdf_test.moc"
