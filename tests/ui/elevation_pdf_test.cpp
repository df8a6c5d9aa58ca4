// Elevations of every sample job as PDF and SVG, measured by other programs: poppler and Qt's SVG renderer.
#include <QDir>
#include <QHashFunctions>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QtTest>

#include "core/drawing/box.h"
#include "core/drawing/elevation.h"
#include "core/job/job_file.h"
#include "core/output/svg.h"
#include "ui/printing/elevation_pdf.h"

using namespace ribwright;

namespace {

constexpr PaperSize papers[] = {PaperSize::Letter, PaperSize::Tabloid, PaperSize::A4, PaperSize::A3};
constexpr int perMillimetre = 20;

struct Sample {
  QString name;
  Job job;
  Plan plan;
};

std::vector<Sample> samples() {
  std::vector<Sample> all;
  const QDir folder(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs"));
  for (const QString& name : folder.entryList({"*.json"})) {
    auto read = loadJob(folder.filePath(name).toStdString());
    if (!read) qFatal("%s", oneLine(read.faults().front()).c_str());
    Plan made = plan(read.value());
    all.push_back({name, std::move(read).value(), std::move(made)});
  }
  return all;
}

QByteArray told(const QString& program, const QStringList& words) {
  QProcess process;
  process.start(program, words);
  process.waitForFinished(60'000);
  return process.readAllStandardOutput();
}

// Outer edge of the scale bar's outline, in mm.
std::optional<Box> scaleBar(const Page& page) {
  for (const Item& item : page.drawing.items) {
    const Stroke* stroke = std::get_if<Stroke>(&item);
    if (!stroke || !stroke->closed || stroke->points.size() != 4) continue;
    const Box box = Box{stroke->points[0].x, stroke->points[0].y, stroke->points[2].x, stroke->points[2].y}.grown(
        stroke->width.size / 2);
    if (box.height() < 3) return box;
  }
  return std::nullopt;
}

// The part of the page round its scale bar that is looked at, in whole mm.
QRect around(const Box& bar) {
  return QRectF(bar.left - 6, bar.top - 3, bar.width() + 12, bar.height() + 6).toAlignedRect();
}

// Length of the dark run along the lower line of the bar, in mm, in a picture of the part `shown`.
double darkRun(const QImage& image, const QRect& shown, const Box& bar) {
  const int y = qRound((bar.bottom - 0.17 - shown.top()) * perMillimetre);
  const auto dark = [&](int x) { return qGray(image.pixel(x, y)) < 128; };
  int left = qRound((bar.middle().x - shown.left()) * perMillimetre), right = left;
  if (!dark(left)) return 0;
  while (left > 0 && dark(left - 1)) --left;
  while (right + 1 < image.width() && dark(right + 1)) ++right;
  return double(right - left + 1) / perMillimetre;
}

QImage svgPicture(const Page& page, const QRect& shown) {
  QSvgRenderer renderer(QByteArray::fromStdString(svgText(page)));
  const PaperExtent extent = extentOf(page.paper);
  QImage image(shown.size() * perMillimetre, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.translate(-shown.topLeft() * perMillimetre);
  renderer.render(&painter, QRectF(0, 0, extent.width * perMillimetre, extent.height * perMillimetre));
  return image;
}

QImage pdfPicture(const QString& pdf, const QString& picture, const QRect& shown) {
  const auto pixels = [](int mm) { return QString::number(mm * perMillimetre); };
  told("pdftoppm", {"-r", QString::number(perMillimetre * 25.4), "-f", "1", "-l", "1", "-x", pixels(shown.left()), "-y",
                    pixels(shown.top()), "-W", pixels(shown.width()), "-H", pixels(shown.height()), "-singlefile",
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
    const auto pixel = [](double at) { return qFloor(at * perMillimetre); };
    missing += qGray(image.pixel(pixel(dot.x - shown.left()), pixel(dot.y - shown.top()))) < 128 ? 0 : 1;
    ++seen;
  }
  return missing;
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
  void pagesHaveTheSizeOfTheirPaper();
  void theFontIsEmbeddedAndTextStaysText();
  void theScaleBarMeasuresTrueInPdfAndSvg();
  void screwsAreMarkedInPdfAndSvg();
  void pagesWithScrewsSayThatNothingIsDrilledByThem();
  void aWallOf334SheetsStaysSmall();
  void theSamePagesGiveTheSameBytes();
  void everyObjectStandsWhereTheTableSays();
  void nothingComesOfNoPages();

 private:
  QString written(const std::vector<Page>& pages) {
    const QString path = folder_.filePath(QStringLiteral("pages.pdf"));
    QFile file(path);
    const std::string pdf = elevationPdf(pages, "Sample");
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf.data(), qint64(pdf.size())) != qint64(pdf.size())) return {};
    return path;
  }

  QTemporaryDir folder_;
  std::vector<Sample> samples_ = samples();
};

void ElevationPdfTest::pagesHaveTheSizeOfTheirPaper() {
  QVERIFY(!samples_.empty());
  for (const Sample& sample : samples_) {
    for (const PaperSize paper : papers) {
      const auto pages = elevationPages(sample.job, sample.plan, paper);
      const QString info = told("pdfinfo", {"-f", "1", "-l", "999", written(pages)});
      const QRegularExpression size("Page +\\d+ size: +([\\d.]+) x ([\\d.]+) pts");
      int count = 0;
      for (auto found = size.globalMatch(info); found.hasNext(); ++count) {
        const auto match = found.next();
        const PaperExtent extent = extentOf(paper);
        QVERIFY2(qAbs(match.captured(1).toDouble() - extent.width / 25.4 * 72) < 0.002, qPrintable(sample.name));
        QVERIFY2(qAbs(match.captured(2).toDouble() - extent.height / 25.4 * 72) < 0.002, qPrintable(sample.name));
      }
      QCOMPARE(count, int(pages.size()));
    }
  }
}

void ElevationPdfTest::theFontIsEmbeddedAndTextStaysText() {
  for (const Sample& sample : samples_) {
    const auto pages = elevationPages(sample.job, sample.plan, PaperSize::A4);
    const QString path = written(pages);
    const QStringList fonts = QString(told("pdffonts", {path})).split('\n', Qt::SkipEmptyParts).mid(2);
    QCOMPARE(fonts.size(), 2);
    for (const QString& font : fonts) {
      QVERIFY2(font.contains("LiberationSans"), qPrintable(font));
      QVERIFY2(QRegularExpression(" yes +(yes|no) +yes +\\d+ +\\d+$").match(font).hasMatch(), qPrintable(font));
    }
    const QString text = QString::fromUtf8(told("pdftotext", {path, "-"}));
    for (const auto& wall : sample.plan.walls) {
      for (const Piece& piece : wall->layout.pieces) {
        QVERIFY2(text.contains(QString::fromStdString(piece.mark)), piece.mark.c_str());
      }
    }
  }
}

void ElevationPdfTest::theScaleBarMeasuresTrueInPdfAndSvg() {
  for (const Sample& sample : samples_) {
    const double length = sample.job.units == UnitSystem::Millimetres ? 100 : 76.2;
    for (const PaperSize paper : papers) {
      const auto pages = elevationPages(sample.job, sample.plan, paper);
      const auto bar = scaleBar(pages.front());
      QVERIFY(bar);
      const QRect shown = around(*bar);
      const QImage pdf = pdfPicture(written(pages), folder_.filePath("bar"), shown);
      QVERIFY(!pdf.isNull());
      QVERIFY2(qAbs(darkRun(pdf, shown, *bar) - length) <= 0.1, qPrintable(sample.name));
      QVERIFY2(qAbs(darkRun(svgPicture(pages.front(), shown), shown, *bar) - length) <= 0.1, qPrintable(sample.name));
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
  const std::string pdf = elevationPdf(elevationPages(job, made, PaperSize::Letter), "Sample");
  QVERIFY(!pdf.empty());
  QVERIFY2(pdf.size() < 1'500'000, qPrintable(QString::number(pdf.size())));
}

void ElevationPdfTest::theSamePagesGiveTheSameBytes() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::A4);
  const std::string first = elevationPdf(pages, "Sample");
  QTest::qWait(1100);  // into another second of the clock
  qputenv("TZ", "Asia/Tokyo");
  for (int round = 0; round < 5; ++round) {
    QHashSeed::resetRandomGlobalSeed();  // as in another process
    QVERIFY(first == elevationPdf(pages, "Sample"));
  }
  qunsetenv("TZ");
  QVERIFY(first != elevationPdf(pages, "Another"));
}

// ISO 32000-1, 7.5.4: an entry gives the offset of the object's first byte.
void ElevationPdfTest::everyObjectStandsWhereTheTableSays() {
  const auto pages = elevationPages(samples_.front().job, samples_.front().plan, PaperSize::A3);
  const QByteArray pdf = QByteArray::fromStdString(elevationPdf(pages, "Sample"));
  const qsizetype table =
      pdf.mid(pdf.lastIndexOf("startxref") + 10).trimmed().split('\n').front().trimmed().toLongLong();
  QVERIFY(pdf.mid(table).startsWith("xref\n0 "));
  const QList<QByteArray> entries = pdf.mid(table, pdf.lastIndexOf("trailer") - table).split('\n').mid(2);
  int objects = 0;
  for (int number = 0; number < entries.size(); ++number) {
    if (!entries[number].contains(" n")) continue;
    const QByteArray start = QByteArray::number(number) + " 0 obj";
    QCOMPARE(pdf.mid(entries[number].left(10).toLongLong(), start.size()), start);
    ++objects;
  }
  QVERIFY(objects > 10);
}

void ElevationPdfTest::nothingComesOfNoPages() { QVERIFY(elevationPdf({}, "Sample").empty()); }

QTEST_MAIN(ElevationPdfTest)
#include "elevation_pdf_test.moc"
