// The window with every sample job: what it shows, what it does with a file that cannot be read, what it writes.
#include <QAction>
#include <QDir>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTreeWidget>
#include <QtTest>

#include "ui/board/elevation_board.h"
#include "ui/session/main_window.h"

using namespace ribwright;

namespace {

QDir samples() { return QDir(QStringLiteral(RIBWRIGHT_ROOT "/sample-jobs")); }

QString anySample() { return samples().filePath(samples().entryList({"*.json"}).front()); }

bool write(const QString& path, const QByteArray& bytes) {
  QFile file(path);
  return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
}

QByteArray read(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

class WindowTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void anEmptyWindowSaysHowToBegin();
  void everySampleOpensAndEveryWallCanBeChosen();
  void aFileThatCannotBeReadIsToldAndChangesNothing();
  void readingAgainShowsTheChangedFileAndKeepsTheWall();
  void aFindingLeadsToItsWall();
  void zoomKeepsWhatLiesUnderTheCursor();
  void aFittedPageStaysWholeWhenTheWindowChanges();
  void pagesOfAWallAreTurned();
  void draggingMovesThePage();
  void anotherPaperDrawsAnew();
  void thePacketIsWritten();
  void aPacketThatCannotBeWrittenIsTold();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->findChild<Kind*>(QLatin1String(name));
  }
  ElevationBoard* board() { return window_->findChild<ElevationBoard*>(); }

  std::unique_ptr<MainWindow> window_;
  QTemporaryDir folder_;
};

void WindowTest::init() {
  window_ = std::make_unique<MainWindow>();
  window_->show();
  QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

void WindowTest::anEmptyWindowSaysHowToBegin() {
  QVERIFY(find<QPushButton>("openFirst")->isVisible());
  QVERIFY(!find<QListWidget>("walls")->isVisible());
  QVERIFY(!find<QPlainTextEdit>("faults")->isVisible());
  QVERIFY(!find<QAction>("savePacket")->isEnabled());
  QVERIFY(find<QAction>("open")->isEnabled());
}

void WindowTest::everySampleOpensAndEveryWallCanBeChosen() {
  const QStringList names = samples().entryList({"*.json"});
  QVERIFY(!names.isEmpty());
  for (const QString& name : names) {
    QVERIFY2(window_->openJob(samples().filePath(name)), qPrintable(name));
    const Session& session = window_->session();
    auto* walls = find<QListWidget>("walls");
    QCOMPARE(walls->count(), int(session.job().walls.size()));
    QVERIFY(walls->isVisible());
    QCOMPARE(find<QTreeWidget>("findings")->topLevelItemCount(), int(session.plan().findings.size()));
    for (int wall = 0; wall < walls->count(); ++wall) {
      walls->setCurrentRow(wall);
      const auto& layout = session.plan().walls[std::size_t(wall)]->layout;
      QCOMPARE(session.wall(), wall);
      QVERIFY(board()->pageCount() > 0);
      const auto* sheets = find<QTableView>("sheets")->model();
      QCOMPARE(sheets->rowCount(), int(layout.pieces.size()));
      for (int row = 0; row < sheets->rowCount(); ++row) {
        QCOMPARE(sheets->index(row, 0).data().toString().toStdString(), layout.pieces[std::size_t(row)].mark);
      }
      QVERIFY(!window_->grab().isNull());
    }
  }
}

void WindowTest::aFileThatCannotBeReadIsToldAndChangesNothing() {
  const QString bad = folder_.filePath("bad job.json");
  QVERIFY(write(bad, "{\"ribwright\": 1, \"walls\": 7}"));
  QVERIFY(!window_->openJob(bad));
  auto* faults = find<QPlainTextEdit>("faults");
  QVERIFY(faults->isVisible());
  QVERIFY2(faults->toPlainText().contains("walls"), qPrintable(faults->toPlainText()));
  QVERIFY(!window_->session().isOpen());

  QVERIFY(window_->openJob(anySample()));
  QVERIFY(!faults->isVisible());
  const QString title = window_->windowTitle();
  QVERIFY(!window_->openJob(folder_.filePath("no such job.json")));
  QVERIFY(faults->isVisible());
  QCOMPARE(window_->windowTitle(), title);
  QVERIFY(window_->session().isOpen());
}

void WindowTest::readingAgainShowsTheChangedFileAndKeepsTheWall() {
  const QString path = folder_.filePath("again.json");
  QByteArray job = read(anySample());
  QVERIFY(write(path, job));
  QVERIFY(window_->openJob(path));
  auto* walls = find<QListWidget>("walls");
  const int last = walls->count() - 1;
  walls->setCurrentRow(last);
  const QByteArray name = QByteArray::fromStdString("\"" + window_->session().job().name + "\"");
  QVERIFY(job.contains(name));
  QVERIFY(write(path, job.replace(name, "\"Another name\"")));
  find<QAction>("reload")->trigger();
  QCOMPARE(window_->session().job().name, std::string("Another name"));
  QVERIFY(window_->windowTitle().startsWith("Another name"));
  QCOMPARE(walls->currentRow(), last);
}

void WindowTest::aFindingLeadsToItsWall() {
  for (const QString& name : samples().entryList({"*.json"})) {
    QVERIFY(window_->openJob(samples().filePath(name)));
    auto* list = find<QTreeWidget>("findings");
    const auto& findings = window_->session().plan().findings;
    for (int i = 0; i < list->topLevelItemCount(); ++i) {
      list->setCurrentItem(list->topLevelItem(i));
      const std::string& wall = findings[std::size_t(i)].wall;
      const Session& session = window_->session();
      if (!wall.empty()) QCOMPARE(session.job().walls[std::size_t(session.wall())].letter, wall);
      QVERIFY(find<QLabel>("findingWords")->text().contains("Do: "));
    }
  }
}

void WindowTest::zoomKeepsWhatLiesUnderTheCursor() {
  QVERIFY(window_->openJob(anySample()));
  const QPointF cursor(board()->width() * 0.3, board()->height() * 0.6);
  const QPointF before = board()->onPaper(cursor);
  const double zoom = board()->zoom();
  for (const int turned : {120, 240, -60}) {
    QWheelEvent event(cursor, board()->mapToGlobal(cursor), {}, {0, turned}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(board(), &event);
    QVERIFY(QLineF(board()->onPaper(cursor), before).length() < 1e-9);
  }
  QVERIFY(board()->zoom() > zoom * 1.5);
}

void WindowTest::aFittedPageStaysWholeWhenTheWindowChanges() {
  QVERIFY(window_->openJob(anySample()));
  for (const QSize size : {QSize(900, 600), QSize(1600, 900), QSize(1000, 1000)}) {
    window_->resize(size);
    QCoreApplication::processEvents();
    const QRectF page = board()->pageOnScreen(0);
    QVERIFY(QRectF(board()->rect()).contains(page));
    const bool filled = page.width() > board()->width() - 30 || page.height() > board()->height() - 30;
    QVERIFY(filled);
  }
  find<QAction>("zoomIn")->trigger();
  QVERIFY(!QRectF(board()->rect()).contains(board()->pageOnScreen(0)));
  find<QAction>("fit")->trigger();
  QVERIFY(QRectF(board()->rect()).contains(board()->pageOnScreen(0)));
}

void WindowTest::pagesOfAWallAreTurned() {
  int turned = 0;
  for (const QString& name : samples().entryList({"*.json"})) {
    QVERIFY(window_->openJob(samples().filePath(name)));
    auto* walls = find<QListWidget>("walls");
    for (int wall = 0; wall < walls->count(); ++wall) {
      walls->setCurrentRow(wall);
      for (int page = 0; page < board()->pageCount(); ++page) {
        QCOMPARE(board()->currentPage(), page);
        QVERIFY(QRectF(board()->rect()).contains(board()->pageOnScreen(page)));
        find<QAction>("nextPage")->trigger();
        ++turned;
      }
      QCOMPARE(board()->currentPage(), board()->pageCount() - 1);
      for (int page = 0; page < board()->pageCount(); ++page) find<QAction>("previousPage")->trigger();
      QCOMPARE(board()->currentPage(), 0);
    }
  }
  QVERIFY(turned > 5);
}

void WindowTest::draggingMovesThePage() {
  QVERIFY(window_->openJob(anySample()));
  const QPointF before = board()->pageOnScreen(0).topLeft();
  QTest::mousePress(board(), Qt::LeftButton, {}, {100, 100});
  QMouseEvent move(QEvent::MouseMove, QPointF(130, 90), board()->mapToGlobal(QPointF(130, 90)), Qt::NoButton,
                   Qt::LeftButton, {});
  QApplication::sendEvent(board(), &move);
  QTest::mouseRelease(board(), Qt::LeftButton, {}, {130, 90});
  QCOMPARE(board()->pageOnScreen(0).topLeft(), before + QPointF(30, -10));
}

void WindowTest::anotherPaperDrawsAnew() {
  QVERIFY(window_->openJob(anySample()));
  for (const char* name : {"paper-a3", "paper-letter", "paper-a4", "paper-tabloid"}) {
    find<QAction>(name)->trigger();
    const auto pages = window_->session().pages();
    QCOMPARE(QByteArray("paper-") + nameOf(pages.front().paper).data(), QByteArray(name));
    const QRectF page = board()->pageOnScreen(0);
    const PaperExtent extent = extentOf(pages.front().paper);
    QVERIFY(qAbs(page.width() / page.height() - extent.width / extent.height) < 1e-9);
    QVERIFY(find<QAction>(name)->isChecked());
  }
}

void WindowTest::thePacketIsWritten() {
  for (const QString& name : samples().entryList({"*.json"})) {
    QVERIFY(window_->openJob(samples().filePath(name)));
    const QDir to(folder_.filePath("packet of " + name));
    QVERIFY(window_->savePacket(to.path()));
    for (const char* file :
         {"sheet-order.csv", "pieces.csv", "holes.csv", "cuts.csv", "findings.csv", "elevations.pdf", "contents.csv"}) {
      QVERIFY2(QFileInfo(to.filePath(file)).size() > 0, file);
    }
    for (const Wall& wall : window_->session().job().walls) {
      QVERIFY(to.exists("elevation-" + QString::fromStdString(wall.letter) + ".svg"));
    }
    QVERIFY(read(to.filePath("elevations.pdf")).startsWith("%PDF-"));
  }
}

void WindowTest::aPacketThatCannotBeWrittenIsTold() {
  QVERIFY(window_->openJob(anySample()));
  const QString file = folder_.filePath("a file, no folder");
  QVERIFY(write(file, "in the way"));
  QVERIFY(!window_->savePacket(file + "/packet"));
  QVERIFY(find<QPlainTextEdit>("faults")->isVisible());
  QCOMPARE(read(file), QByteArray("in the way"));
}

QTEST_MAIN(WindowTest)
#include "window_test.moc"
