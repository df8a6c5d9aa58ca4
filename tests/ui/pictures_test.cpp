// The pictures of the README: the window and a page of the sample workshop. Made anew by
//   RIBWRIGHT_PICTURES=resources/pictures .build/release/tests/pictures_test
// and looked at here, so that they can always be made. With RIBWRIGHT_WINDOWS=FOLDER the window is also left there in
// light and dark at three sizes of text.
#include <QAction>
#include <QDir>
#include <QDockWidget>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QtTest>

#include "core/drawing/drill_pages.h"
#include "core/drawing/elevation.h"
#include "core/editing/new_job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/board/hand_picture.h"
#include "ui/board/wall_board.h"
#include "ui/painting/page_painter.h"
#include "ui/panels/kept_new_job.h"
#include "ui/panels/new_job_dialog.h"
#include "ui/session/appearance.h"

using namespace ribwright;

namespace {

constexpr std::size_t gableEnd = 1;  // wall B of the workshop

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
  void cleanup();
  void theWindowInEveryAppearance();
  void theWindow();
  void aWindowBeingDrawn();
  void theDialogForNewJobs();
  void aPage();
  void aTemplate();
  void howTrimIsCut();

 private:
  QImage windowPainted();
  static QSize screenFor(int percent);
  QString place(const char* name) const {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES", folder_.path());
    return QDir(folder).filePath(QLatin1String(name));
  }

  QTemporaryDir folder_;
  std::unique_ptr<OpenWindow> window_;
};

void PicturesTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY(QTest::qWaitForWindowExposed(window_->window.get()));
  (*window_)->resize(screenFor(100));
  QVERIFY((*window_)->openJob(workshop()));
}

// Who needs larger text has a larger window.
QSize PicturesTest::screenFor(int percent) { return QSize(1360, 900) * (1 + (percent - 100) / 200.0); }

QImage PicturesTest::windowPainted() {
  QTest::qWait(50);  // laid out and painted
  return (*window_)->grab().toImage();
}

void PicturesTest::cleanup() {
  chooseAppearance(Appearance::System);
  chooseTextPercent(100);
}

void PicturesTest::theWindow() {
  window_->tiles()[gableEnd]->click();
  window_->session().choose(Part{Part::Kind::Opening, "B", "W2"});
  const QImage image = windowPainted();
  QVERIFY(inked(image) > 0.05);
  QVERIFY(image.save(place("window.png")));
}

// Light and dark, at three sizes of text: to be looked at, beside the README's.
void PicturesTest::theWindowInEveryAppearance() {
  for (const auto& [appearance, name] : {std::pair(Appearance::Light, "light"), {Appearance::Dark, "dark"}}) {
    for (const int percent : {100, 150, 200}) {
      chooseAppearance(appearance);
      chooseTextPercent(percent);
      (*window_)->resize(screenFor(percent));
      theWindow();
      const QImage image = windowPainted();
      QCOMPARE(image.pixelColor(image.width() / 2, image.height() - 2).lightness() < 128,
               appearance == Appearance::Dark);
      const QString shot = folder_.filePath(QStringLiteral("window-%1-%2.png").arg(QLatin1String(name)).arg(percent));
      QVERIFY(image.save(shot));
      const QString wanted = qEnvironmentVariable("RIBWRIGHT_WINDOWS");
      if (!wanted.isEmpty()) QVERIFY(image.save(QDir(wanted).filePath(QFileInfo(shot).fileName())));
    }
  }
}

// The hand half-way from one corner to the other.
void PicturesTest::aWindowBeingDrawn() {
  window_->find<QAction>("tool:window")->trigger();
  auto* board = window_->find<WallBoard>("board");
  const auto pixel = [&](int feet, int up) {
    return board->shownAt().at(onBoard({Length::feet(feet), Length::feet(up)})).toPoint();
  };
  QTest::mousePress(board, Qt::LeftButton, {}, pixel(11, 5));
  for (const QPoint& to : {pixel(14, 7), pixel(16, 9)}) {
    QMouseEvent moved(QEvent::MouseMove, QPointF(to), board->mapToGlobal(QPointF(to)), Qt::NoButton, Qt::LeftButton,
                      {});
    QApplication::sendEvent(board, &moved);
  }
  QVERIFY(window_->session().isPreview());
  const QImage image = windowPainted();
  QVERIFY(inked(image) > 0.05);
  QVERIFY(image.save(place("drawing.png")));
  QTest::keyClick(board, Qt::Key_Escape);
  QTest::mouseRelease(board, Qt::LeftButton, {}, pixel(16, 9));
  QVERIFY(!window_->session().history()->canUndo());
}

void PicturesTest::theDialogForNewJobs() {
  QVERIFY(keepNewJob(shippedNewJob(UnitSystem::FeetInches)).empty());
  NewJobDialog dialog(window_->window.get());
  dialog.resize(1100, 640);
  dialog.show();
  dialog.findChild<QLineEdit*>(QStringLiteral("newName"))->setText(QStringLiteral("Feed store"));
  QTest::qWait(400);  // its picture is drawn
  const QImage image = dialog.grab().toImage();
  QVERIFY(inked(image) > 0.05);
  QVERIFY(image.save(place("new-job.png")));
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

// In the Order dock, with its proof.
void PicturesTest::howTrimIsCut() {
  auto* dock = window_->find<QDockWidget>("orderDock");
  dock->raise();
  (*window_)->resizeDocks({dock}, {420}, Qt::Vertical);
  auto* tabs = window_->find<QTabWidget>("order");
  tabs->setCurrentWidget(tabs->findChild<QWidget*>(QStringLiteral("trim")));
  auto* proof = window_->find<QLabel>("trimProof");
  QTRY_VERIFY(!proof->text().isEmpty());  // worked out beside the window
  const QImage image = windowPainted();
  QVERIFY(inked(image) > 0.05);
  QVERIFY(image.save(place("order.png")));
}

// The first template of the measured wall.
void PicturesTest::aTemplate() {
  const Session& session = window_->session();
  const auto pages = drillPages(session.job(), session.plan(), PaperSize::Letter);
  const auto page = std::find_if(pages.begin(), pages.end(), [](const Page& each) {
    return each.wall == "B" && each.title.find("drill template") != std::string::npos;
  });
  QVERIFY(page != pages.end());
  const QImage image = painted(*page, 5);
  QVERIFY(inked(image) > 0.02);
  QVERIFY(image.save(place("template.png")));
}

WINDOW_TEST(PicturesTest)
#include "pictures_test.moc"
