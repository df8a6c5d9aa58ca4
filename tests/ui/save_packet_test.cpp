// Saving a packet from the window: it is made beside everything else, tells how far it is, and can be stopped.
#include <QAction>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

Q_DECLARE_METATYPE(ribwright::PacketEnd)

class SavePacketTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void everySamplesPacketIsWritten();
  void progressIsShownAndEnds();
  void theWindowStaysUsableMeanwhile();
  void aStoppedPacketLeavesTheFolderAsItWas();
  void aPacketThatCannotBeWrittenIsTold();
  void theWindowCanBeClosedMeanwhile();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  // What came of it; the window works on while waiting.
  PacketEnd written(const QString& folder) {
    QSignalSpy ended(window_->window.get(), &MainWindow::packetEnded);
    if (!(*window_)->startPacket(folder) || (ended.isEmpty() && !ended.wait(60000))) return {folder, -1, false, {}};
    return ended.front().front().value<PacketEnd>();
  }
  static QStringList everythingIn(const QString& folder) {
    return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
  }

  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void SavePacketTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
}

void SavePacketTest::everySamplesPacketIsWritten() {
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    const QDir to(folder_.filePath("packet of " + QFileInfo(path).baseName()));
    const PacketEnd end = written(to.path());
    QVERIFY2(end.faults.empty() && !end.stopped, qPrintable(path));
    QCOMPARE(end.files, int(everythingIn(to.path()).size()));
    for (const char* file :
         {"sheet-order.csv", "pieces.csv", "holes.csv", "cuts.csv", "findings.csv", "elevations.pdf", "contents.csv"})
      QVERIFY2(QFileInfo(to.filePath(file)).size() > 0, file);
    for (const Wall& wall : window_->session().job().walls)
      QVERIFY(to.exists("elevation-" + QString::fromStdString(wall.letter) + ".svg"));
    QVERIFY(readFile(to.filePath("elevations.pdf")).startsWith("%PDF-"));
  }
}

void SavePacketTest::progressIsShownAndEnds() {
  auto* bar = find<QProgressBar>("packetProgress");
  QVERIFY(!bar->isVisible());
  QSignalSpy moved(bar, &QProgressBar::valueChanged);
  QVERIFY((*window_)->startPacket(folder_.filePath("told")));
  QVERIFY(bar->isVisible());
  QVERIFY(!find<QAction>("savePacket")->isEnabled());
  QVERIFY(find<QAction>("stopPacket")->isEnabled());
  QVERIFY(!(*window_)->startPacket(folder_.filePath("a second one")));
  QTRY_VERIFY_WITH_TIMEOUT(!bar->isVisible(), 60000);
  QVERIFY(moved.size() > 2);
  for (int i = 1; i < moved.size(); ++i) QVERIFY(moved[i][0].toInt() >= moved[i - 1][0].toInt());
  QVERIFY(find<QAction>("savePacket")->isEnabled());
  QVERIFY(!find<QAction>("stopPacket")->isEnabled());
}

void SavePacketTest::theWindowStaysUsableMeanwhile() {
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
  QSignalSpy ended(window_->window.get(), &MainWindow::packetEnded);
  QVERIFY((*window_)->startPacket(folder_.filePath("beside")));
  int walls = 0;
  while (ended.isEmpty()) {
    for (WallTile* tile : window_->tiles()) {
      tile->click();
      QVERIFY(tile->isChecked());
      ++walls;
      QCoreApplication::processEvents();
    }
  }
  QVERIFY(walls > 0);
  QVERIFY(ended.front().front().value<PacketEnd>().faults.empty());
}

void SavePacketTest::aStoppedPacketLeavesTheFolderAsItWas() {
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
  const QString to = folder_.filePath("stopped");
  QVERIFY(QDir().mkpath(to));
  QVERIFY(writeFile(to + "/pieces.csv", "of an earlier day"));
  QSignalSpy ended(window_->window.get(), &MainWindow::packetEnded);
  QVERIFY((*window_)->startPacket(to));
  find<QPushButton>("stopPacketNow")->click();
  QVERIFY(!ended.isEmpty() || ended.wait(60000));
  const auto end = ended.front().front().value<PacketEnd>();
  QVERIFY(end.stopped);
  QCOMPARE(end.files, 0);
  QCOMPARE(everythingIn(to), QStringList{"pieces.csv"});
  QCOMPARE(readFile(to + "/pieces.csv"), QByteArray("of an earlier day"));
  QVERIFY(find<QAction>("savePacket")->isEnabled());
  QVERIFY(!find<QPlainTextEdit>("faults")->isVisible());
  QVERIFY(written(folder_.filePath("after all")).files > 0);
}

void SavePacketTest::aPacketThatCannotBeWrittenIsTold() {
  const QString file = folder_.filePath("a file, no folder");
  QVERIFY(writeFile(file, "in the way"));
  QVERIFY(!written(file + "/packet").faults.empty());
  QVERIFY(find<QPlainTextEdit>("faults")->isVisible());
  QCOMPARE(readFile(file), QByteArray("in the way"));
}

void SavePacketTest::theWindowCanBeClosedMeanwhile() {
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
  const QString to = folder_.filePath("closed");
  QVERIFY((*window_)->startPacket(to));
  window_.reset();
  const QStringList left = everythingIn(to);
  QVERIFY(left.isEmpty() || left.contains("contents.csv"));  // none or all
}

WINDOW_TEST(SavePacketTest)
#include "save_packet_test.moc"
