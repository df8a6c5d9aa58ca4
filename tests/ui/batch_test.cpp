// Drill batches in the window: which may be drilled, why the others may not, and what an edit does to them.
#include <QAction>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTableWidget>

#include "core/editing/pattern_edits.h"
#include "core/editing/survey_edits.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/board/wall_board.h"
#include "ui/panels/elided_label.h"

using namespace ribwright;

class BatchTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void everyBatchOfEveryWallIsARow();
  void clearedBatchesSayTheirRowsAndHeldOnesOnlyWhy();
  void aRowLightsItsSheetsOnTheBoard();
  void theParticularsSayTheBatchInFull();
  void anEditTellsWhatItDidToTheBatches();
  void openingAnotherJobTellsNothing();
  void f6ReachesTheBatches();
  void thePatternsNumbersStandInTheDialog();
  void aConfirmationNeedsAllThree();
  void aConfirmationIsWithdrawn();
  void aConfirmationThatFellSaysSo();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  QTableView* table() { return find<QTableView>("batchTable"); }
  QString cell(int row, int column) { return table()->model()->index(row, column).data().toString(); }
  const std::vector<DrillBatch>& batches() { return session().chosenPlan().batches; }
  int rowOf(bool cleared) {
    for (std::size_t i = 0; i < batches().size(); ++i) {
      if (batches()[i].isCleared() == cleared) return int(i);
    }
    return -1;
  }
  QDialog* opened() {
    find<QPushButton>("confirmPatternButton")->click();
    auto* dialog = find<QDialog>("confirmPattern");
    if (!dialog) return nullptr;
    dialog->activateWindow();
    const bool typed = QTest::qWaitFor([dialog] { return dialog->isAncestorOf(QApplication::focusWidget()); });
    if (!typed) return nullptr;
    return dialog;
  }
  QString told() { return find<ElidedLabel>("statusBatches")->text(); }

  std::unique_ptr<OpenWindow> window_;
};

void BatchTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
  find<QTabWidget>("tables")->setCurrentWidget(find<QWidget>("batches"));
}

void BatchTest::everyBatchOfEveryWallIsARow() {
  std::size_t count = 0;
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    for (std::size_t wall = 0; wall < session().job().walls.size(); ++wall) {
      session().chooseWall(int(wall));
      QCOMPARE(table()->model()->rowCount(), int(batches().size()));
      for (std::size_t i = 0; i < batches().size(); ++i) {
        QCOMPARE(cell(int(i), 0).toStdString(), batches()[i].id);
        QCOMPARE(cell(int(i), 2).toInt(), int(batches()[i].pieces.size()));
      }
      count += batches().size();
    }
  }
  QVERIFY(count > 50);
}

void BatchTest::clearedBatchesSayTheirRowsAndHeldOnesOnlyWhy() {
  session().chooseWall("A");
  const int cleared = rowOf(true), held = rowOf(false);
  QVERIFY(cleared >= 0 && held >= 0);
  QCOMPARE(cell(cleared, 3), QString("✓ cleared"));
  QCOMPARE(cell(held, 3), QString("■ held"));
  QVERIFY2(cell(cleared, 4).contains("base angle 2-3/4\""), qPrintable(cell(cleared, 4)));
  QVERIFY2(cell(held, 4).contains("is not measured from"), qPrintable(cell(held, 4)));
  QVERIFY2(cell(held, 4).contains("Measure girt"), qPrintable(cell(held, 4)));
}

void BatchTest::aRowLightsItsSheetsOnTheBoard() {
  session().chooseWall("B");
  auto* board = window_->window->findChild<WallBoard*>();
  const QImage before = board->grab().toImage();
  const int row = 1;
  QTest::mouseClick(table()->viewport(), Qt::LeftButton, {},
                    table()->visualRect(table()->model()->index(row, 0)).center());
  QVERIFY(session().chosen() == (Part{Part::Kind::Batch, "B", batches()[row].id}));
  QVERIFY(board->grab().toImage() != before);
  QTest::keyClick(table(), Qt::Key_Down);
  QVERIFY(session().chosen() == (Part{Part::Kind::Batch, "B", batches()[row + 1].id}));
  const QImage lit = board->grab().toImage();
  session().choose(Part{Part::Kind::Piece, "B", session().chosenPlan().layout.pieces[0].mark});
  QVERIFY(board->grab().toImage() != lit);
  session().choose(std::nullopt);
  QVERIFY(board->grab().toImage() != lit);
}

void BatchTest::theParticularsSayTheBatchInFull() {
  session().chooseWall("A");
  const auto sayings = [this] {
    QStringList all;
    const auto* rows = find<QTableWidget>("particulars");
    for (int row = 0; row < rows->rowCount(); ++row)
      all << rows->item(row, 0)->text() + ": " + rows->item(row, 1)->text();
    return all.join('\n');
  };
  session().choose(Part{Part::Kind::Batch, "A", batches()[std::size_t(rowOf(false))].id});
  QVERIFY(find<QLabel>("particularsTitle")->text().startsWith("Drill batch A/"));
  QVERIFY2(sayings().contains("Held because: Girt g2 is not measured"), qPrintable(sayings()));
  QVERIFY(sayings().contains("What to do: Measure girt g2"));
  QVERIFY(!sayings().contains("from the lower end"));
  session().chooseWall("B");
  session().choose(Part{Part::Kind::Batch, "B", batches()[0].id});
  QVERIFY2(sayings().contains("May be drilled: yes: cleared"), qPrintable(sayings()));
  QVERIFY2(sayings().contains("girt g1: 3' 7-5/8"), qPrintable(sayings()));
}

void BatchTest::anEditTellsWhatItDidToTheBatches() {
  auto* line = find<ElidedLabel>("statusBatches");
  QVERIFY(!line->isVisible());
  session().chooseWall("A");
  const std::string cleared = batches()[std::size_t(rowOf(true))].id;
  const std::size_t wall = std::size_t(session().wall());
  QVERIFY(session().apply("Strike out", clearReading(session().job(), wall, "g1", Length::feet(20))));
  QVERIFY2(told().isEmpty() || !told().contains("cleared"), qPrintable(told()));
  QVERIFY(session().apply("Withdraw", withdrawConfirmation(session().job(), session().chosenWall().pattern)));
  QVERIFY2(told().contains("held again") && told().contains(QString::fromStdString(cleared)), qPrintable(told()));
  QVERIFY(line->isVisible());
  find<QAction>("undo")->trigger();
  QVERIFY2(told().contains("cleared") && told().contains(QString::fromStdString(cleared)), qPrintable(told()));
  Job moved = session().job();  // as if the whole of a girt stood higher
  for (GirtReading& reading : moved.walls[1].survey.girts[1].readings)
    reading.height = reading.height + Length::inches(0, 8);
  QVERIFY(session().apply("Raise g2", moved));
  QVERIFY2(told().contains("templates anew") && told().contains("B/1"), qPrintable(told()));
  Job named = session().job();
  named.name = "Another name";
  QVERIFY(session().apply("Rename", named));
  QVERIFY(!line->isVisible());
}

void BatchTest::openingAnotherJobTellsNothing() {
  QVERIFY((*window_)->openJob(samples().filePath("lean-to.json")));
  QVERIFY((*window_)->openJob(workshop()));
  QVERIFY(told().isEmpty());
}

void BatchTest::f6ReachesTheBatches() {
  window_->tiles()[0]->setFocus();
  bool reached = false;
  for (int i = 0; i < 6; ++i) {
    QTest::keyClick(window_->window.get(), Qt::Key_F6);
    reached = reached || window_->window->focusWidget() == table();
  }
  QVERIFY(reached);
}

void BatchTest::thePatternsNumbersStandInTheDialog() {
  QDialog* dialog = opened();
  QVERIFY(dialog && dialog->isVisible());
  const ScrewPattern& pattern = session().job().patterns[0];
  const auto* numbers = dialog->findChild<QTableWidget*>("patternNumbers");
  QVERIFY(numbers->rowCount() >= int(pattern.rows.size()) + 5);
  QStringList all;
  for (int row = 0; row < numbers->rowCount(); ++row)
    all << numbers->item(row, 0)->text() + ": " + numbers->item(row, 2)->text();
  for (std::size_t row = 0; row < pattern.rows.size(); ++row) {
    for (const Length offset : pattern.rows[row].offsets)
      QVERIFY(all[int(row)].contains(QString::fromStdString(fineText(offset, session().style()))));
  }
  QVERIFY(dialog->findChild<QLabel*>("patternWords")->text().contains("confirmation falls"));
  QTest::keyClick(dialog, Qt::Key_Escape);
  QTRY_VERIFY(!find<QDialog>("confirmPattern"));
  QVERIFY(!session().history()->canUndo());
}

void BatchTest::aConfirmationNeedsAllThree() {
  session().chooseWall("B");
  QVERIFY(session().apply("Withdraw", withdrawConfirmation(session().job(), session().chosenWall().pattern)));
  QCOMPARE(rowOf(true), -1);
  QDialog* dialog = opened();
  QVERIFY(dialog->findChild<QLabel*>("patternStanding")->text().contains("Not confirmed"));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  QVERIFY(dialog->isVisible());
  auto* fault = dialog->findChild<QLabel*>("patternFault");
  for (const char* part : {"Plan sheet", "name", "date"}) QVERIFY2(fault->text().contains(part), part);
  for (const auto& [field, words] : {std::pair("patternSheet", "S-4"), {"patternBy", "M. Reed"}}) {
    QCOMPARE(QApplication::focusWidget()->objectName(), QString(field));
    QTest::keyClicks(QApplication::focusWidget(), words);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    QVERIFY(dialog->isVisible());
  }
  QCOMPARE(rowOf(true), -1);
  QTest::keyClicks(QApplication::focusWidget(), "2026-03-12");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  QTRY_VERIFY(!find<QDialog>("confirmPattern"));
  const Confirmation& made = *session().job().patterns[0].confirmation;
  QVERIFY(made.planSheet == "S-4" && made.by == "M. Reed" && made.date == "2026-03-12");
  QVERIFY(rowOf(true) >= 0);
  QVERIFY(told().contains("cleared"));
  QVERIFY(session().history()->undoName().starts_with("Confirm pattern"));
}

void BatchTest::aConfirmationIsWithdrawn() {
  session().chooseWall("B");
  QVERIFY(rowOf(true) >= 0);
  opened()->findChild<QPushButton*>("withdrawConfirmation")->click();
  QCOMPARE(rowOf(true), -1);
  QVERIFY(told().contains("held again"));
  find<QAction>("undo")->trigger();
  QVERIFY(rowOf(true) >= 0);
}

void BatchTest::aConfirmationThatFellSaysSo() {
  Job job = session().job();
  job.patterns[0].rows[0].offsets[0] = job.patterns[0].rows[0].offsets[0] + Length::inches(0, 16);
  QVERIFY(session().apply("Move a screw", job));
  QVERIFY(told().contains("held again"));
  QVERIFY(opened()->findChild<QLabel*>("patternStanding")->text().contains("has fallen"));
}

WINDOW_TEST(BatchTest)
#include "batch_test.moc"
