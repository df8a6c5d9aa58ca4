// Opening jobs: every sample, a file that cannot be read, one that changes on the disk, and those opened before.
#include <QAction>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTreeWidget>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/recent_jobs.h"

using namespace ribwright;

class OpenJobTest : public QObject {
  Q_OBJECT

 private slots:
  void init() { window_ = std::make_unique<OpenWindow>(); }
  void anEmptyWindowSaysHowToBegin();
  void everySampleOpensAndEveryWallCanBeChosen();
  void theTablesSayWhatTheLayoutSays();
  void aFileThatCannotBeReadIsToldAndChangesNothing();
  void readingAgainShowsTheChangedFileAndKeepsTheWall();
  void aFileChangedOnTheDiskIsOfferedOnce();
  void aFileReplacedByAnotherIsOffered();
  void jobsOpenedBeforeAreOfferedTheLatestFirst();
  void aJobThatIsGoneIsGreyedAndCanBeForgotten();
  void theStartPageOffersJobsByName();
  void nothingCanBeUndoneOfAJobJustOpened();
  void anEditIsUndoneAndDoneAgain();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  QByteArray renamed(const QByteArray& job, const QByteArray& name) {
    return QByteArray(job).replace(QByteArray::fromStdString("\"" + window_->session().job().name + "\""),
                                   "\"" + name + "\"");
  }

  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void OpenJobTest::anEmptyWindowSaysHowToBegin() {
  QVERIFY(find<QPushButton>("openFirst")->isVisible());
  QVERIFY(!find<PerimeterStrip>("walls")->isVisible());
  QVERIFY(!find<QPlainTextEdit>("faults")->isVisible());
  for (const char* name : {"savePacket", "reload", "undo", "redo", "zoomIn", "nextPage", "asPrinted"})
    QVERIFY2(!find<QAction>(name)->isEnabled(), name);
  QVERIFY(find<QAction>("open")->isEnabled());
}

void OpenJobTest::everySampleOpensAndEveryWallCanBeChosen() {
  QVERIFY(samplePaths().size() >= 5);
  for (const QString& path : samplePaths()) {
    QVERIFY2((*window_)->openJob(path), qPrintable(path));
    const Session& session = window_->session();
    QCOMPARE(window_->tiles().size(), session.job().walls.size());
    QCOMPARE(find<QTreeWidget>("findings")->topLevelItemCount(), int(session.plan().findings.size()));
    for (std::size_t wall = 0; wall < window_->tiles().size(); ++wall) {
      window_->tiles()[wall]->click();
      QCOMPARE(session.wall(), int(wall));
      QVERIFY(!(*window_)->grab().isNull());
    }
  }
}

void OpenJobTest::theTablesSayWhatTheLayoutSays() {
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    for (std::size_t wall = 0; wall < window_->tiles().size(); ++wall) {
      window_->tiles()[wall]->click();
      const auto& pieces = window_->session().chosenPlan().layout.pieces;
      const auto* sheets = find<QTableView>("sheets")->model();
      QCOMPARE(sheets->rowCount(), int(pieces.size()));
      for (int row = 0; row < sheets->rowCount(); ++row)
        QCOMPARE(sheets->index(row, 0).data().toString().toStdString(), pieces[std::size_t(row)].mark);
      const Wall& stated = window_->session().chosenWall();
      QCOMPARE(find<QTableView>("openingsTable")->model()->rowCount(),
               int(stated.openings.size()) + 1);  // and a new one
      QCOMPARE(find<QTableView>("penetrationsTable")->model()->rowCount(), int(stated.penetrations.size()) + 1);
    }
  }
}

void OpenJobTest::aFileThatCannotBeReadIsToldAndChangesNothing() {
  const QString bad = folder_.filePath("bad job.json");
  QVERIFY(writeFile(bad, "{\"ribwright\": 1, \"walls\": 7}"));
  QVERIFY(!(*window_)->openJob(bad));
  auto* faults = find<QPlainTextEdit>("faults");
  QVERIFY(faults->isVisible());
  QVERIFY2(faults->toPlainText().contains("walls"), qPrintable(faults->toPlainText()));
  QVERIFY(!window_->session().isOpen());

  QVERIFY((*window_)->openJob(workshop()));
  QVERIFY(!faults->isVisible());
  const QString title = (*window_)->windowTitle();
  const Job before = window_->session().job();
  for (const QString& path : {bad, folder_.filePath("no such job.json")}) {
    QVERIFY(!(*window_)->openJob(path));
    QVERIFY(faults->isVisible());
    QCOMPARE((*window_)->windowTitle(), title);
    QVERIFY(window_->session().job() == before);
    QCOMPARE(window_->session().path(), workshop());
  }
}

void OpenJobTest::readingAgainShowsTheChangedFileAndKeepsTheWall() {
  const QString path = folder_.filePath("again.json");
  const QByteArray job = readFile(workshop());
  QVERIFY(writeFile(path, job));
  QVERIFY((*window_)->openJob(path));
  window_->tiles().back()->click();
  const int last = window_->session().wall();
  QVERIFY(last > 0);
  QVERIFY(writeFile(path, renamed(job, "Another name")));
  find<QAction>("reload")->trigger();
  QCOMPARE(window_->session().job().name, std::string("Another name"));
  QVERIFY((*window_)->windowTitle().startsWith("Another name"));
  QCOMPARE(window_->session().wall(), last);
}

void OpenJobTest::aFileChangedOnTheDiskIsOfferedOnce() {
  const QString path = folder_.filePath("watched.json");
  const QByteArray job = readFile(workshop());
  QVERIFY(writeFile(path, job));
  QVERIFY((*window_)->openJob(path));
  auto* bar = find<QWidget>("reloadBar");
  QVERIFY(writeFile(path, job));  // the same bytes are no change
  QTest::qWait(600);
  QVERIFY(!bar->isVisible());

  const std::string before = window_->session().job().name;
  QVERIFY(writeFile(path, renamed(job, "Changed outside")));
  QTRY_VERIFY(bar->isVisible());
  QCOMPARE(window_->session().job().name, before);  // nothing is taken over unasked
  find<QPushButton>("readAgain")->click();
  QCOMPARE(window_->session().job().name, std::string("Changed outside"));
  QVERIFY(!bar->isVisible());

  QVERIFY(writeFile(path, job));
  QTRY_VERIFY(bar->isVisible());
  find<QPushButton>("keepShown")->click();
  QVERIFY(!bar->isVisible());
  QCOMPARE(window_->session().job().name, std::string("Changed outside"));
}

void OpenJobTest::aFileReplacedByAnotherIsOffered() {
  const QString path = folder_.filePath("replaced.json"), other = folder_.filePath("other.json");
  const QByteArray job = readFile(workshop());
  QVERIFY(writeFile(path, job));
  QVERIFY((*window_)->openJob(path));
  QVERIFY(writeFile(other, renamed(job, "Put in its place")));
  QVERIFY(QFile::remove(path));
  QVERIFY(QFile::rename(other, path));
  QTRY_VERIFY(find<QWidget>("reloadBar")->isVisible());
}

void OpenJobTest::jobsOpenedBeforeAreOfferedTheLatestFirst() {
  auto* menu = find<QMenu>("recent");
  const auto offered = [menu] {
    emit menu->aboutToShow();
    QStringList texts;
    for (const QAction* action : menu->actions()) texts << action->text();
    return texts;
  };
  const QString first = samples().filePath("lean-to.json");
  QVERIFY((*window_)->openJob(first));
  QVERIFY((*window_)->openJob(workshop()));
  QCOMPARE(offered(), QStringList({"&1  " + workshop(), "&2  " + first}));
  menu->actions().at(1)->trigger();
  QCOMPARE(window_->session().path(), first);
  QCOMPARE(offered(), QStringList({"&1  " + first, "&2  " + workshop()}));
}

void OpenJobTest::aJobThatIsGoneIsGreyedAndCanBeForgotten() {
  auto* menu = find<QMenu>("recent");
  const QString gone = folder_.filePath("soon & gone.json");
  QVERIFY(writeFile(gone, readFile(workshop())));
  QVERIFY((*window_)->openJob(gone));
  QVERIFY((*window_)->openJob(workshop()));
  emit menu->aboutToShow();
  QVERIFY(menu->actions().at(1)->isEnabled());
  QCOMPARE(menu->actions().size(), 2);
  QVERIFY(QFile::remove(gone));
  emit menu->aboutToShow();
  QVERIFY(!menu->actions().at(1)->isEnabled());
  QVERIFY(menu->actions().at(1)->text().endsWith("soon && gone.json (not there)"));
  find<QAction>("forgetGone")->trigger();
  emit menu->aboutToShow();
  QCOMPARE(menu->actions().size(), 1);
}

void OpenJobTest::theStartPageOffersJobsByName() {
  const QString gone = folder_.filePath("gone.json");
  rememberJob(gone, "A barn");
  rememberJob(workshop(), "The workshop");
  window_->renew();
  auto* list = find<QTreeWidget>("recentJobs");
  QCOMPARE(list->topLevelItemCount(), 2);
  QCOMPARE(list->topLevelItem(0)->text(0), QString("The workshop"));
  QCOMPARE(list->topLevelItem(0)->text(1), workshop());
  QVERIFY(list->topLevelItem(1)->text(1).endsWith("(not there)"));
  list->setCurrentItem(list->topLevelItem(1));
  QVERIFY(!find<QPushButton>("openRecent")->isEnabled());
  find<QPushButton>("forgetRecent")->click();
  QCOMPARE(list->topLevelItemCount(), 1);
  QCOMPARE(int(recentJobs().size()), 1);
  list->setFocus();
  QTest::keyClick(list, Qt::Key_Return);
  QCOMPARE(window_->session().path(), workshop());
}

void OpenJobTest::nothingCanBeUndoneOfAJobJustOpened() {
  QVERIFY((*window_)->openJob(workshop()));
  QVERIFY(!find<QAction>("undo")->isEnabled());
  QVERIFY(!find<QAction>("redo")->isEnabled());
}

void OpenJobTest::anEditIsUndoneAndDoneAgain() {
  QVERIFY((*window_)->openJob(workshop()));
  const Job before = window_->session().job();
  Job edited = before;
  edited.name = "Renamed";
  QVERIFY(window_->session().apply("Rename the job", edited));
  QVERIFY(find<QAction>("undo")->toolTip().contains("Rename the job"));
  find<QAction>("undo")->trigger();
  QVERIFY(window_->session().job() == before);
  QVERIFY(!find<QAction>("undo")->isEnabled());
  find<QAction>("redo")->trigger();
  QCOMPARE(window_->session().job().name, std::string("Renamed"));
  QVERIFY(!find<QAction>("redo")->isEnabled());
}

WINDOW_TEST(OpenJobTest)
#include "open_job_test.moc"
