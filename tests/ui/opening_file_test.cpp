// An opening schedule read into the window, and written out of it.
#include <QAction>

#include "core/job/by_id.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/opening_file.h"

using namespace ribwright;

class OpeningFileTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void aScheduleIsOneEditThatCanBeUndone();
  void whatIsWrongIsToldAndNothingChanges();
  void whatIsWrittenReadsBackTheSame();
  void bothStandInTheMenu();

 private:
  Session& session() { return window_->session(); }
  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void OpeningFileTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
}

void OpeningFileTest::aScheduleIsOneEditThatCanBeUndone() {
  const Job before = session().job();
  const std::string known = before.walls[0].openings.at(0).id;
  const QString path = folder_.filePath("openings.csv");
  const QByteArray rows =
      QByteArray("wall,id,distance_in,width_in,height_in\r\nA,") + known.c_str() + ",60,37,80\r\nA,X1,300,24,24\r\n";
  QVERIFY(writeFile(path, rows));
  const TableFileEnd end = readOpenings(session(), path);
  session().settle();
  QVERIFY(end.faults.empty());
  QVERIFY(end.done.contains("added 1 (A/X1)"));
  QVERIFY(end.done.contains(QStringLiteral("changed 1 (A/%1)").arg(QString::fromStdString(known))));
  QVERIFY(byId(session().job().walls[0].openings, known)->width == Length::inches(37));
  QVERIFY(session().job().walls[0].openings.size() == before.walls[0].openings.size() + 1);
  session().undo();
  session().settle();
  QVERIFY(session().job() == before);
  QVERIFY(!session().history()->canUndo());
}

void OpeningFileTest::whatIsWrongIsToldAndNothingChanges() {
  const Job before = session().job();
  const QString path = folder_.filePath("wrong.csv");
  QVERIFY(writeFile(path, "wall,id,distance_in,width_in,height_in\r\nA,X1,1,2,3\r\nZ,X2,1,2,3\r\n"));
  const TableFileEnd end = readOpenings(session(), path);
  QCOMPARE(end.faults.size(), std::size_t(1));
  QVERIFY(oneLine(end.faults[0]) == "line 3, wall: the job has no wall \"Z\"");
  QVERIFY(!end.title.isEmpty());
  QVERIFY(session().newest() == before);
  QCOMPARE(readOpenings(session(), folder_.filePath("none.csv")).faults.size(), std::size_t(1));
}

void OpeningFileTest::whatIsWrittenReadsBackTheSame() {
  const Job before = session().job();
  const QString path = folder_.filePath("out.csv");
  QVERIFY(writeOpenings(session(), path).faults.empty());
  QVERIFY(readFile(path).startsWith("wall,id,kind,from,column,distance_in,to,width_in,height_in,sill_in,jamb_trim_in"));
  QVERIFY(readOpenings(session(), path).faults.empty());
  QVERIFY(session().newest() == before);
  QCOMPARE(writeOpenings(session(), folder_.filePath("no/folder/out.csv")).faults.size(), std::size_t(1));
}

void OpeningFileTest::bothStandInTheMenu() {
  for (const char* name : {"readOpenings", "writeOpenings"}) QVERIFY(window_->find<QAction>(name)->isEnabled());
}

WINDOW_TEST(OpeningFileTest)
#include "opening_file_test.moc"
