// A contact sheet: one page of every kind, each at its best and at its worst, side by side in one picture, for a person
// to look at. With RIBWRIGHT_PICTURES=<folder> it is written there as contact-sheet.png.
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QtTest>
#include <cmath>
#include <set>

#include "core/drawing/drill_pages.h"
#include "core/drawing/elevation.h"
#include "tests/core/drawing/drawn_jobs.h"
#include "tests/core/drawing/surveyed_job.h"
#include "tests/ui/window_tests.h"
#include "ui/painting/page_painter.h"

using namespace ribwright;

namespace {

constexpr double pixelsPerMillimetre = 4;
constexpr int gap = 24, across = 3;

struct ShownPage {
  const char* job;
  PaperSize paper;
  std::size_t page;
};

// The frozen gable is the usual case; the others are 334 sheets, a door of 60 ft, 3 ft of wall, bands with end laps on
// two pages and their tables, girts closer than their heights can stand, and walls without sheets.
const std::vector<ShownPage> shown = {
    {"frozen gable", PaperSize::Letter, 0},    {"screwed front", PaperSize::Tabloid, 0},
    {"metric gable", PaperSize::A4, 0},        {"long wall", PaperSize::Letter, 0},
    {"hangar door", PaperSize::A4, 0},         {"narrow wall", PaperSize::A4, 0},
    {"tall banded wall", PaperSize::A3, 0},    {"tall banded wall", PaperSize::A3, 1},
    {"stepped wall", PaperSize::A3, 0},        {"crowded girts", PaperSize::Letter, 0},
    {"unsheeted walls", PaperSize::Letter, 0}, {"unsheeted walls", PaperSize::Letter, 2}};

// The first page of every kind for measuring and drilling: of a front with doors, of girts every 3 in, of one that
// nobody measured.
std::vector<Page> drillKinds() {
  std::vector<Page> kinds;
  for (const Job& job : {surveyed(withMember(screwedFront())), surveyed(withMember(crowdedGirts())), screwedFront()}) {
    std::set<std::string> seen;
    for (const Page& page : drillPages(job, plan(job), PaperSize::Letter)) {
      const std::string kind = page.title.substr(0, page.title.rfind(", page"));
      if (seen.insert(kind.substr(0, kind.find("template"))).second) kinds.push_back(page);
    }
  }
  return kinds;
}

QImage painted(const Page& page) {
  const PaperExtent extent = extentOf(page.paper);
  QImage image(
      QSize(int(std::ceil(extent.width * pixelsPerMillimetre)), int(std::ceil(extent.height * pixelsPerMillimetre))),
      QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(pixelsPerMillimetre, pixelsPerMillimetre);
  paintDrawing(painter, page.drawing, 1 / pixelsPerMillimetre);
  return image;
}

// How much of a picture is ink, in thousandths.
double darkPerMille(const QImage& image) {
  qint64 dark = 0;
  for (int y = 0; y < image.height(); ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(image.constScanLine(y));
    for (int x = 0; x < image.width(); ++x) dark += qGray(line[x]) < 128 ? 1 : 0;
  }
  return 1000.0 * double(dark) / (double(image.width()) * image.height());
}

}  // namespace

class ContactSheetTest : public QObject {
  Q_OBJECT

 private slots:
  void everyKindOfPageIsPainted() {
    const std::vector<DrawnJob> jobs = drawnJobs();
    std::vector<QImage> pages;
    for (const ShownPage& one : shown) {
      const auto job =
          std::find_if(jobs.begin(), jobs.end(), [&](const DrawnJob& drawn) { return drawn.name == one.job; });
      QVERIFY2(job != jobs.end(), one.job);
      const auto made = elevationPages(job->job, job->plan, one.paper);
      QVERIFY2(one.page < made.size(), one.job);
      pages.push_back(painted(made[one.page]));
      QVERIFY2(darkPerMille(pages.back()) > 4, one.job);    // more than a frame alone
      QVERIFY2(darkPerMille(pages.back()) < 150, one.job);  // and no black sheet
    }
    for (const Page& page : drillKinds()) {
      pages.push_back(painted(page));
      QVERIFY2(darkPerMille(pages.back()) > 4, page.title.c_str());
      QVERIFY2(darkPerMille(pages.back()) < 150, page.title.c_str());
    }
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    if (!folder.isEmpty()) QVERIFY(sheetOf(pages).save(folder + "/contact-sheet.png"));
  }

 private:
  static QImage sheetOf(const std::vector<QImage>& pages) {
    constexpr int width = 1400;
    std::vector<QImage> small;
    for (const QImage& page : pages) small.push_back(page.scaledToWidth(width, Qt::SmoothTransformation));
    int height = gap;
    for (std::size_t row = 0; row < small.size(); row += across) {
      int tallest = 0;
      for (std::size_t i = row; i < std::min(row + across, small.size()); ++i)
        tallest = std::max(tallest, small[i].height());
      height += tallest + gap;
    }
    QImage sheet(across * (width + gap) + gap, height, QImage::Format_RGB32);
    sheet.fill(Qt::darkGray);
    QPainter painter(&sheet);
    int y = gap;
    for (std::size_t row = 0; row < small.size(); row += across) {
      int tallest = 0;
      for (std::size_t i = row; i < std::min(row + across, small.size()); ++i) {
        painter.drawImage(gap + int(i - row) * (width + gap), y, small[i]);
        tallest = std::max(tallest, small[i].height());
      }
      y += tallest + gap;
    }
    return sheet;
  }
};

WINDOW_TEST(ContactSheetTest)
#include "contact_sheet_test.moc"
