// The pictures of the README: the window and a page of the sample workshop. Made anew by
//   RIBWRIGHT_PICTURES=resources/pictures .build/release/tests/pictures_test
// and looked at here, so that they can always be made.
#include <QDir>
#include <QImage>
#include <QListWidget>
#include <QPainter>
#include <QTemporaryDir>
#include <QtTest>

#include "core/drawing/elevation.h"
#include "ui/painting/page_painter.h"
#include "ui/session/main_window.h"

using namespace ribwright;

namespace {

constexpr int gableEnd = 1;  // wall B of the workshop

// How many of its pixels are none of the paper or window ground.
double inked(const QImage& image) {
  const QRgb ground = image.pixel(image.width() / 2, 1);
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) != ground;
  }
  return double(count) / (double(image.width()) * image.height());
}

QImage painted(const Page& page, double pixelsPerMillimetre) {
  const PaperExtent extent = extentOf(page.paper);
  QImage image(qRound(extent.width * pixelsPerMillimetre), qRound(extent.height * pixelsPerMillimetre),
               QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(pixelsPerMillimetre, pixelsPerMillimetre);
  paintDrawing(painter, page.drawing, 1 / pixelsPerMillimetre);
  return image;
}

}  // namespace

class PicturesTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void theWindow();
  void aPage();

 private:
  QString place(const char* name) const {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES", folder_.path());
    return QDir(folder).filePath(QLatin1String(name));
  }

  QTemporaryDir folder_;
  std::unique_ptr<MainWindow> window_;
};

void PicturesTest::init() {
  window_ = std::make_unique<MainWindow>();
  window_->show();
  QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
  QVERIFY(window_->openJob(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json")));
}

void PicturesTest::theWindow() {
  window_->findChild<QListWidget*>("walls")->setCurrentRow(gableEnd);
  QTest::qWait(50);  // laid out and painted
  const QImage image = window_->grab().toImage();
  QVERIFY(inked(image) > 0.05);
  QVERIFY(image.save(place("window.png")));
}

void PicturesTest::aPage() {
  const Session& session = window_->session();
  const auto pages = elevationPages(session.job(), session.plan(), PaperSize::Letter);
  const auto page = std::find_if(pages.begin(), pages.end(), [](const Page& each) { return each.wall == "B"; });
  QVERIFY(page != pages.end());
  const QImage image = painted(*page, 5);
  QVERIFY(inked(image) > 0.02);
  QVERIFY(image.save(place("elevation.png")));
}

QTEST_MAIN(PicturesTest)
#include "pictures_test.moc"
