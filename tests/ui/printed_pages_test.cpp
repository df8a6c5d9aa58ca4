// The pages as they are printed: the switch to them, zoom, pan, fit, turning, another paper.
#include <QAction>
#include <QPushButton>
#include <QTableView>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/board/elevation_board.h"

using namespace ribwright;

class PrintedPagesTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup() { window_.reset(); }
  void oneSwitchLeadsThereAndBack();
  void pagesAreMadeWhenTheyAreSeen();
  void zoomKeepsWhatLiesUnderTheCursor();
  void aFittedPageStaysWholeWhenTheWindowChanges();
  void pagesOfAWallAreTurned();
  void draggingMovesThePage();
  void anotherPaperDrawsAnew();
  void aChosenPartTurnsToItsPage();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  ElevationBoard* pages() { return find<ElevationBoard>("pages"); }

  std::unique_ptr<OpenWindow> window_;
};

void PrintedPagesTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY(QTest::qWaitForWindowExposed(window_->window.get()));
  QVERIFY((*window_)->openJob(workshop()));
  find<QPushButton>("asPages")->click();
  QCoreApplication::processEvents();
}

void PrintedPagesTest::oneSwitchLeadsThereAndBack() {
  auto* action = find<QAction>("asPrinted");
  QVERIFY(pages()->isVisible() && action->isChecked());
  QVERIFY(find<QAction>("nextPage")->isEnabled());
  find<QPushButton>("asBoard")->click();
  QVERIFY(!pages()->isVisible() && !action->isChecked());
  QVERIFY(find<QWidget>("board")->isVisible());
  QVERIFY(!find<QAction>("nextPage")->isEnabled());
  QVERIFY(!find<QAction>("paper-a4")->isEnabled());
  action->trigger();
  QVERIFY(pages()->isVisible() && find<QPushButton>("asPages")->isChecked());
  find<QAction>("stepBack")->trigger();  // with nothing chosen one step back leads to the board
  QVERIFY(find<QWidget>("board")->isVisible());
}

void PrintedPagesTest::pagesAreMadeWhenTheyAreSeen() {
  find<QPushButton>("asBoard")->click();
  const int before = pages()->pageCount();
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
  window_->session().chooseWall(1);
  QCOMPARE(pages()->pageCount(), before);
  find<QPushButton>("asPages")->click();
  QVERIFY(pages()->pageCount() > before);
  QCOMPARE(pages()->pageCount(), int(window_->session().pages().size()));
  for (const Page& page : window_->session().pages()) QCOMPARE(page.wall, window_->session().chosenWall().letter);
}

void PrintedPagesTest::zoomKeepsWhatLiesUnderTheCursor() {
  const QPointF cursor(pages()->width() * 0.3, pages()->height() * 0.6);
  const QPointF before = pages()->onShown(cursor);
  const double zoom = pages()->zoom();
  for (const int turned : {120, 240, -60}) {
    QWheelEvent event(cursor, pages()->mapToGlobal(cursor), {}, {0, turned}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(pages(), &event);
    QVERIFY(QLineF(pages()->onShown(cursor), before).length() < 1e-9);
  }
  QVERIFY(pages()->zoom() > zoom * 1.5);
}

void PrintedPagesTest::aFittedPageStaysWholeWhenTheWindowChanges() {
  for (const QSize size : {QSize(1100, 760), QSize(1600, 900), QSize(1150, 1000)}) {
    (*window_)->resize(size);
    QCoreApplication::processEvents();
    const QRectF page = pages()->pageOnScreen(0);
    QVERIFY(QRectF(pages()->rect()).contains(page));
    QVERIFY(page.width() > pages()->width() - 30 || page.height() > pages()->height() - 30);
  }
  find<QAction>("zoomIn")->trigger();
  QVERIFY(!QRectF(pages()->rect()).contains(pages()->pageOnScreen(0)));
  find<QAction>("fit")->trigger();
  QVERIFY(QRectF(pages()->rect()).contains(pages()->pageOnScreen(0)));
}

void PrintedPagesTest::pagesOfAWallAreTurned() {
  int turned = 0;
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    for (int wall = 0; wall < int(window_->session().job().walls.size()); ++wall) {
      window_->session().chooseWall(wall);
      for (int page = 0; page < pages()->pageCount(); ++page) {
        QCOMPARE(pages()->currentPage(), page);
        QVERIFY(QRectF(pages()->rect()).contains(pages()->pageOnScreen(page)));
        find<QAction>("nextPage")->trigger();
        ++turned;
      }
      QCOMPARE(pages()->currentPage(), pages()->pageCount() - 1);
      for (int page = 0; page < pages()->pageCount(); ++page) find<QAction>("previousPage")->trigger();
      QCOMPARE(pages()->currentPage(), 0);
    }
  }
  QVERIFY(turned > 5);
}

void PrintedPagesTest::draggingMovesThePage() {
  const QPointF before = pages()->pageOnScreen(0).topLeft();
  QTest::mousePress(pages(), Qt::LeftButton, {}, {100, 100});
  QMouseEvent move(QEvent::MouseMove, QPointF(130, 90), pages()->mapToGlobal(QPointF(130, 90)), Qt::NoButton,
                   Qt::LeftButton, {});
  QApplication::sendEvent(pages(), &move);
  QTest::mouseRelease(pages(), Qt::LeftButton, {}, {130, 90});
  QCOMPARE(pages()->pageOnScreen(0).topLeft(), before + QPointF(30, -10));
}

void PrintedPagesTest::anotherPaperDrawsAnew() {
  for (const char* name : {"paper-a3", "paper-letter", "paper-a4", "paper-tabloid"}) {
    find<QAction>(name)->trigger();
    const auto& shown = window_->session().pages();
    QCOMPARE(QByteArray("paper-") + nameOf(shown.front().paper).data(), QByteArray(name));
    const QRectF page = pages()->pageOnScreen(0);
    const PaperExtent extent = extentOf(shown.front().paper);
    QVERIFY(qAbs(page.width() / page.height() - extent.width / extent.height) < 1e-9);
    QVERIFY(find<QAction>(name)->isChecked());
  }
}

// The warehouse's long walls are broken over pages.
void PrintedPagesTest::aChosenPartTurnsToItsPage() {
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
  Session& session = window_->session();
  auto* sheets = find<QTableView>("sheets");
  sheets->setCurrentIndex(sheets->model()->index(sheets->model()->rowCount() - 1, 0));
  QVERIFY(session.chosen());
  const auto& parts = session.pages()[std::size_t(pages()->currentPage())].drawing.parts;
  QVERIFY(std::find(parts.begin(), parts.end(), *session.chosen()) != parts.end());
}

WINDOW_TEST(PrintedPagesTest)
#include "printed_pages_test.moc"
