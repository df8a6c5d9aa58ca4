// A survey's table read into the window, and written out of it.
#include <QPlainTextEdit>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/survey_file.h"

using namespace ribwright;

class SurveyFileTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void aTableIsOneEditThatCanBeUndone();
  void whatIsWrongIsToldAndNothingChanges();
  void whatIsWrittenReadsBackTheSame();

 private:
  Session& session() { return window_->session(); }
  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void SurveyFileTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
}

void SurveyFileTest::aTableIsOneEditThatCanBeUndone() {
  const Job before = session().job();
  const QString path = folder_.filePath("survey.csv");
  QVERIFY(writeFile(path, "wall,line,u_in,height_in\r\nC,g1,0,44\r\nC,g1,720,44.25\r\nC,g2,0,90\r\n"));
  QVERIFY((*window_)->readSurvey(path));
  QCOMPARE(session().job().walls[2].survey.girts.size(), std::size_t(2));
  QCOMPARE(session().job().walls[2].survey.girts[0].readings.size(), std::size_t(2));
  QVERIFY(session().history()->canUndo());
  session().undo();
  QVERIFY(session().job() == before);
  QVERIFY(!session().history()->canUndo());
}

void SurveyFileTest::whatIsWrongIsToldAndNothingChanges() {
  const Job before = session().job();
  const QString path = folder_.filePath("wrong.csv");
  QVERIFY(writeFile(path, "wall,line,u_in,height_in\r\nC,g1,0,44\r\nC,g9,0,44\r\n"));
  QVERIFY(!(*window_)->readSurvey(path));
  QVERIFY(session().job() == before);
  bool told = false;
  for (const QPlainTextEdit* lines : (*window_)->findChildren<QPlainTextEdit*>())
    told = told || (lines->isVisible() && lines->toPlainText().contains("line 3, line: wall C has no girt \"g9\""));
  QVERIFY(told);
  QVERIFY(!(*window_)->readSurvey(folder_.filePath("none.csv")));
}

void SurveyFileTest::whatIsWrittenReadsBackTheSame() {
  const Job before = session().job();
  const QString path = folder_.filePath("out.csv");
  QVERIFY(writeSurvey(session(), path).empty());
  QVERIFY(readFile(path).startsWith("wall,line,u_in,height_in,within_in,by,date\r\n"));
  QVERIFY((*window_)->readSurvey(path));
  QVERIFY(session().job() == before);
  QCOMPARE(writeSurvey(session(), folder_.filePath("no/folder/out.csv")).size(), std::size_t(1));
}

WINDOW_TEST(SurveyFileTest)
#include "survey_file_test.moc"
