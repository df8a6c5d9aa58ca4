// Full-scale strips as poppler paints them at 600 dpi: every hole's cross within 0.1 mm of where it must be.
#include <QImage>
#include <QImageReader>
#include <QtTest>
#include <algorithm>

#include "core/drawing/drill_pages.h"
#include "tests/ui/paper_samples.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;
using namespace ribwright::papertest;

namespace {

constexpr double perMillimetre = 600 / 25.4;

// Upright lines of 10 mm: the crosses, by their lower ends.
std::vector<PaperPoint> crossesOn(const Page& page) {
  std::vector<PaperPoint> crosses;
  for (const Item& item : page.drawing.items) {
    const Stroke* stroke = std::get_if<Stroke>(&item);
    if (!stroke || stroke->points.size() != 2 || stroke->dash != Dash::Solid) continue;
    const PaperPoint &a = stroke->points[0], &b = stroke->points[1];
    if (a.x == b.x && std::abs(std::abs(a.y - b.y) - 10) < 1e-9) crosses.push_back({a.x, std::max(a.y, b.y)});
  }
  return crosses;
}

// Middle of the dark run nearest to x on the level y, mm.
double darkAt(const QImage& image, double x, double y) {
  const int row = qRound(y * perMillimetre), middle = qRound(x * perMillimetre);
  const auto dark = [&](int at) { return qGray(image.pixel(at, row)) < 128; };
  for (int off = 0; off < 40; ++off) {
    for (const int at : {middle - off, middle + off}) {
      if (!dark(at)) continue;
      int left = at, right = at;
      while (dark(left - 1)) --left;
      while (dark(right + 1)) ++right;
      return (left + right + 1) / 2.0 / perMillimetre;
    }
  }
  return -1;
}

}  // namespace

class StripsOnPaperTest : public QObject {
  Q_OBJECT

 private slots:
  void holesStandWhereTheyMust();
};

void StripsOnPaperTest::holesStandWhereTheyMust() {
  QImageReader::setAllocationLimit(512);  // MB: a page of A3 at 600 dpi
  int looked = 0;
  for (const Sample& sample : paperSamples()) {
    if (sample.name != QStringLiteral("gable-workshop.json")) continue;
    for (const PaperSize paper : papers) {
      std::vector<Page> pages = drillPages(sample.job, sample.plan, paper);
      std::erase_if(pages, [](const Page& page) { return page.title.find("full-scale strips") == std::string::npos; });
      QVERIFY(!pages.empty());
      pages.resize(1);
      const QTemporaryDir folder;
      const QString pdf = writtenPdf(folder, pages);
      told("pdftoppm", {"-r", "600", "-gray", "-singlefile", pdf, folder.filePath("page")});
      for (std::size_t i = 0; i < pages.size(); ++i) {
        const QImage image(folder.filePath(QStringLiteral("page.pgm")));
        QVERIFY(!image.isNull());
        QVERIFY(std::abs(image.width() - extentOf(paper).width * perMillimetre) <= 1);
        for (const PaperPoint& cross : crossesOn(pages[i])) {
          const double found = darkAt(image, cross.x, cross.y - 1.5);
          QVERIFY2(std::abs(found - cross.x) < 0.1, qPrintable(QStringLiteral("%1 for %2").arg(found).arg(cross.x)));
          ++looked;
        }
      }
    }
  }
  QVERIFY(looked >= 16);
}

WINDOW_TEST(StripsOnPaperTest)
#include "strips_on_paper_test.moc"
