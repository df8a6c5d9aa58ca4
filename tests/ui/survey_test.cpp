// The survey as it is typed: someone reads the tape, another types, by keyboard alone.
#include <QAction>
#include <QCheckBox>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>

#include "core/fastening/survey_grid.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

class SurveyTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void rowsAreEdgesFromTheTopAndColumnsAreStations();
  void cellsShowReadingAndDeviation();
  void everyWallOfEverySampleHasItsSurvey();
  void typingBeginsAReadingAndEnterGoesOn();
  void enterSkipsWhatIsNotReached();
  void theSameAgainAndArithmetic();
  void everyEntryIsOneNamedEdit();
  void aStickCheckNeedsNameAndDate();
  void whatCannotBeReadStays();
  void escapeBringsBackWhatStoodThere();
  void deleteStrikesOut();
  void aRowOfASpreadsheetIsPasted();
  void aPasteThatDoesNotFitChangesNothing();
  void fieldsOfTheWallAreEdits();
  void aFieldKeepsWhatItCannotRead();
  void whatIsBeingTypedIsSavedToo();
  void theGirtAtHandIsLitUp();
  void aWindowGoesAwayWhileOneTypes();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  QTableView* table() { return find<QTableView>("surveyTable"); }
  QString words() { return find<QLabel>("surveyWords")->text(); }
  QLineEdit* editor() { return table()->findChild<QLineEdit*>("surveyEditor"); }
  QString cell(int row, int column) { return table()->model()->index(row, column).data().toString(); }
  void goTo(int row, int column) {
    table()->setFocus();
    table()->setCurrentIndex(table()->model()->index(row, column));
  }
  std::pair<int, int> here() { return {table()->currentIndex().row(), table()->currentIndex().column()}; }
  // To whatever has the keyboard.
  void type(const char* text) {
    for (const char* letter = text; *letter != 0; ++letter) QTest::keyClick(QApplication::focusWidget(), *letter);
  }
  void press(Qt::Key key, Qt::KeyboardModifiers with = {}) { QTest::keyClick(QApplication::focusWidget(), key, with); }
  void enter(const char* text) {
    type(text);
    press(Qt::Key_Return);
  }
  void undo() { press(Qt::Key_Z, Qt::ControlModifier); }
  void fill(const char* field, const char* text) {
    find<QLineEdit>(field)->setFocus();
    find<QLineEdit>(field)->selectAll();
    type(text);
  }
  int rowOf(const char* start) {
    const auto* header = table()->model();
    for (int row = 0; row < header->rowCount(); ++row) {
      if (header->headerData(row, Qt::Vertical).toString().startsWith(start)) return row;
    }
    return -1;
  }
  const WallSurvey& survey() { return session().chosenWall().survey; }
  std::string lastEdit() { return session().history()->undoName(); }

  std::unique_ptr<OpenWindow> window_;
};

void SurveyTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
  session().chooseWall("B");
  find<QTabWidget>("tables")->setCurrentWidget(find<QWidget>("survey"));
}

void SurveyTest::rowsAreEdgesFromTheTopAndColumnsAreStations() {
  QStringList rows, columns;
  const auto* model = table()->model();
  for (int i = 0; i < model->rowCount(); ++i) rows << model->headerData(i, Qt::Vertical).toString().simplified();
  for (int i = 0; i < model->columnCount(); ++i) columns << model->headerData(i, Qt::Horizontal).toString();
  QCOMPARE(rows,
           QStringList({"Girt g4 14' 6\"", "Girt g3 11' 0\"", "Girt g2 7' 4\"", "Girt g1 3' 6\"", "Slab edge 0\""}));
  QCOMPARE(columns, QStringList({"column 1", "7' 0\"", "mid 1-2", "column 2", "mid 2-3", "33' 0\"", "column 3"}));
}

void SurveyTest::cellsShowReadingAndDeviation() {
  const int row = rowOf("Girt g2");
  QCOMPARE(cell(row, 0), QString("7' 5-3/4\""));
  QCOMPARE(cell(row, 1), QString());
  QVERIFY(cell(rowOf("Girt g4"), 1).startsWith("14' 7-3/4\" ± 1/8\""));
  const auto off = [&](int column) { return table()->model()->index(row, column).data(Qt::UserRole).toString(); };
  QCOMPARE(off(0), QString("0"));
  QCOMPARE(off(2), QString("-3/8\""));
  QCOMPARE(off(3), QString("+1/4\""));
  goTo(row, 2);
  for (const char* part :
       {"Girt g2", "mid 1-2", "10' 0\"", "7' 5-3/4\"", "7' 5-3/8\"", "-3/8\"", "M. Reed", "2026-03-09"})
    QVERIFY2(words().contains(part), part);
}

void SurveyTest::everyWallOfEverySampleHasItsSurvey() {
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    for (std::size_t wall = 0; wall < session().job().walls.size(); ++wall) {
      session().chooseWall(int(wall));
      const WallPlan& plan = session().chosenPlan();
      const auto lines = surveyLines(session().chosenWall(), plan.layout, plan.holes.supports);
      QCOMPARE(table()->model()->rowCount(), int(lines.size()));
      QVERIFY(!(*window_)->grab().isNull());
      for (int row = 0; row < table()->model()->rowCount(); ++row)
        QVERIFY(!table()->model()->index(row, 0).data(Qt::AccessibleTextRole).toString().isEmpty());
    }
  }
}

void SurveyTest::typingBeginsAReadingAndEnterGoesOn() {
  const int row = rowOf("Girt g3"), columns = table()->model()->columnCount();
  goTo(row, 1);
  type("133-3/4");
  QVERIFY(editor() && editor()->isVisible());
  press(Qt::Key_Return);
  QCOMPARE(cell(row, 1), QString("11' 1-3/4\""));
  QCOMPARE(here(), std::pair(row, 2));
  QVERIFY(!editor() || !editor()->isVisible());
  QCOMPARE(window_->window->focusWidget(), static_cast<QWidget*>(table()));
  goTo(row, columns - 1);
  enter("133");
  QCOMPARE(here(), std::pair(row + 1, 0));  // the next edge below
  press(Qt::Key_Return, Qt::ShiftModifier);
  QCOMPARE(here(), std::pair(row, columns - 1));
  press(Qt::Key_Return);
  type("88");
  press(Qt::Key_Tab);
  QCOMPARE(here(), std::pair(row + 1, 1));
  QCOMPARE(cell(row + 1, 0), QString("7' 4\""));
}

void SurveyTest::enterSkipsWhatIsNotReached() {
  Job job = session().job();
  job.walls[std::size_t(session().wall())].girts[2].to = Length::feet(20);  // g3
  QVERIFY(session().apply("Shorten g3", job));
  const int row = rowOf("Girt g3");
  goTo(row, 3);
  enter("133");
  QCOMPARE(here(), std::pair(row + 1, 0));
  goTo(row, 4);
  type("7");
  QVERIFY(!editor() || !editor()->isVisible());
  QVERIFY2(words().contains("does not reach"), qPrintable(words()));
}

void SurveyTest::theSameAgainAndArithmetic() {
  const int row = rowOf("Girt g2");
  goTo(row, 0);
  enter("80 + 9-1/2");
  QCOMPARE(cell(row, 0), QString("7' 5-1/2\""));
  enter("=");
  QCOMPARE(cell(row, 1), QString("7' 5-1/2\""));
  QCOMPARE(here(), std::pair(row, 2));
}

void SurveyTest::everyEntryIsOneNamedEdit() {
  const Job before = session().job();
  const int row = rowOf("Girt g2");
  goTo(row, 0);
  enter("89");
  QCOMPARE(lastEdit(), std::string("Reading: Girt g2, column 1"));
  QVERIFY((*window_)->isWindowModified());
  enter("89");
  undo();
  undo();
  QVERIFY(session().job() == before);
  QCOMPARE(cell(row, 0), QString("7' 5-3/4\""));
  find<QAction>("redo")->trigger();
  QCOMPARE(cell(row, 0), QString("7' 5\""));
  QCOMPARE(here(), std::pair(row, 2));  // the place stays at hand
}

void SurveyTest::aStickCheckNeedsNameAndDate() {
  const Job before = session().job();
  const int row = rowOf("Girt g3");
  goTo(row, 2);
  enter("133-1/2 +- 1/8");
  QVERIFY2(words().contains("who read it and when"), qPrintable(words()));
  QCOMPARE(here(), std::pair(row, 2));
  QCOMPARE(editor()->text(), QString("133-1/2 +- 1/8"));
  QVERIFY(session().job() == before);
  fill("surveyBy", "J. Ortiz");
  fill("surveyDate", "2026-03-11");
  goTo(row, 2);
  press(Qt::Key_F2);
  QCOMPARE(editor()->text(), QString("133-1/2 +- 1/8"));  // nothing is typed twice
  press(Qt::Key_Return);
  QCOMPARE(cell(row, 2), QString("11' 1-1/2\" ± 1/8\""));
  const auto reading = readingAt(session().chosenWall(), {SurveyLine::Of::Girt, "g3", 2, {}, {}}, Length::feet(10));
  QVERIFY(reading && reading->by == "J. Ortiz" && reading->date == "2026-03-11");
}

void SurveyTest::whatCannotBeReadStays() {
  const Job before = session().job();
  const int row = rowOf("Girt g3");
  goTo(row, 1);
  enter("133 1/2 x");
  QVERIFY2(words().contains("133 1/2 x"), qPrintable(words()));
  QCOMPARE(editor()->text(), QString("133 1/2 x"));
  QTest::mouseClick(table()->viewport(), Qt::LeftButton, {},
                    table()->visualRect(table()->model()->index(0, 0)).center());
  QVERIFY(cell(row, 1).contains("133 1/2 x"));
  session().chooseWall("A");
  session().chooseWall("B");
  QVERIFY(cell(row, 1).contains("133 1/2 x"));
  QVERIFY(session().job() == before);
  goTo(row, 1);
  QVERIFY(words().contains("133 1/2 x"));
  enter("133-1/2");
  QCOMPARE(cell(row, 1), QString("11' 1-1/2\""));
}

void SurveyTest::escapeBringsBackWhatStoodThere() {
  const int row = rowOf("Girt g2");
  goTo(row, 0);
  enter("nonsense");
  press(Qt::Key_Escape);
  QCOMPARE(cell(row, 0), QString("7' 5-3/4\""));
  QVERIFY(!session().history()->canUndo());
}

void SurveyTest::deleteStrikesOut() {
  const int row = rowOf("Girt g4");
  goTo(row, 1);
  press(Qt::Key_Delete);
  QCOMPARE(survey().girts[3].readings.size(), std::size_t(2));
  QVERIFY(lastEdit().starts_with("Strike out the reading: Girt g4"));
  QCOMPARE(table()->model()->columnCount(), 6);  // nothing else was measured there
  undo();
  QCOMPARE(survey().girts[3].readings.size(), std::size_t(3));
  table()->selectRow(rowOf("Girt g2"));
  press(Qt::Key_Delete);
  QCOMPARE(survey().girts.size(), std::size_t(3));
  undo();
  QCOMPARE(survey().girts.size(), std::size_t(4));
}

void SurveyTest::aRowOfASpreadsheetIsPasted() {
  const int row = rowOf("Girt g3");
  QGuiApplication::clipboard()->setText("133.5\t133.25\t\t134\r\n88\t88.5\r\n");
  goTo(row, 0);
  press(Qt::Key_V, Qt::ControlModifier);
  QCOMPARE(cell(row, 0), QString("11' 1-1/2\""));
  QCOMPARE(cell(row, 1), QString("11' 1-1/4\""));
  QCOMPARE(cell(row, 2), QString());
  QCOMPARE(cell(row, 3), QString("11' 2\""));
  QCOMPARE(cell(row + 1, 0), QString("7' 4\""));
  QCOMPARE(lastEdit(), std::string("5 readings"));
  undo();
  QVERIFY(!session().history()->canUndo());

  QGuiApplication::clipboard()->setText("133.5\tabout 133");
  press(Qt::Key_V, Qt::ControlModifier);
  QCOMPARE(cell(row, 0), QString("11' 1-1/2\""));
  QVERIFY(cell(row, 1).contains("about 133"));
  QCOMPARE(here(), std::pair(row, 1));
  QVERIFY(words().contains("about 133"));
}

void SurveyTest::aPasteThatDoesNotFitChangesNothing() {
  const Job before = session().job();
  QGuiApplication::clipboard()->setText("133.5\t133.25");
  goTo(rowOf("Girt g3"), table()->model()->columnCount() - 1);
  press(Qt::Key_V, Qt::ControlModifier);
  QVERIFY(session().job() == before);
  QVERIFY2(words().contains("133.25"), qPrintable(words()));
}

void SurveyTest::fieldsOfTheWallAreEdits() {
  auto* props = find<QCheckBox>("surveyProps");
  QVERIFY(props->isChecked());
  props->setFocus();
  press(Qt::Key_Space);
  QVERIFY(!survey().propsInPlace);
  fill("surveyChalk", "-1-3/4");
  press(Qt::Key_Return);
  QVERIFY(survey().chalkLine == -Length::inches(1, 48));
  QCOMPARE(lastEdit(), std::string("Chalk line"));
  fill("surveyRising", "41' 9");
  press(Qt::Key_Tab);
  QVERIFY(survey().diagonalRising == Length::feet(41, 9));
  fill("surveyFalling", " ");
  press(Qt::Key_Return);
  QVERIFY(!survey().diagonalFalling);
  for (int i = 0; i < 4; ++i) find<QAction>("undo")->trigger();
  QVERIFY(props->isChecked());
  QCOMPARE(find<QLineEdit>("surveyRising")->text(), QString("41' 9-1/8\""));
  QVERIFY(find<QLineEdit>("surveyChalk")->text().isEmpty());
}

void SurveyTest::aFieldKeepsWhatItCannotRead() {
  for (const char* wrong : {"forty", "-3'"}) {
    fill("surveyRising", wrong);
    press(Qt::Key_Return);
    QCOMPARE(find<QLineEdit>("surveyRising")->text(), QString(wrong));
    QVERIFY(words().startsWith("▲"));
    QVERIFY(!session().history()->canUndo());
  }
  press(Qt::Key_Escape);
  QCOMPARE(find<QLineEdit>("surveyRising")->text(), QString("41' 9-1/8\""));
}

void SurveyTest::whatIsBeingTypedIsSavedToo() {
  QTemporaryDir folder;
  const QString path = folder.filePath("typed.json");
  QVERIFY(QFile::copy(workshop(), path));
  QVERIFY((*window_)->openJob(path));
  session().chooseWall("B");
  goTo(rowOf("Girt g2"), 0);
  type("90");
  press(Qt::Key_S, Qt::ControlModifier);
  QVERIFY(readFile(path).contains("\"7' 6\\\"\""));
  QCOMPARE(cell(rowOf("Girt g2"), 0), QString("7' 6\""));
  QVERIFY(!(*window_)->isWindowModified());
}

void SurveyTest::theGirtAtHandIsLitUp() {
  goTo(rowOf("Girt g2"), 0);
  QVERIFY(session().chosen() == (Part{Part::Kind::Girt, "B", "g2"}));
}

void SurveyTest::aWindowGoesAwayWhileOneTypes() {
  for (const char* typed : {"90", "no length"}) {
    goTo(rowOf("Girt g2"), 0);
    type(typed);
    QVERIFY(editor());
    init();
    fill("surveyChalk", typed);
    init();
    QVERIFY((*window_)->openJob(samples().filePath("metric-hall.json")));  // an eave to be asked for its height
    goTo(1, 0);
    type(typed);
    init();
  }
}

WINDOW_TEST(SurveyTest)
#include "survey_test.moc"
