// One selection, shared by the strip, the plan, the tables, the findings and the particulars, whoever makes it.
#include <QAction>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTableView>
#include <QTableWidget>
#include <QTreeWidget>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/plan_inset.h"

using namespace ribwright;

class SelectionTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void aWallChosenInTheStripIsChosenEverywhere();
  void arrowKeysWalkTheStrip();
  void aWallIsChosenInThePlan();
  void everyFindingLeadsToItsWallAndPart();
  void aRowOfATableChoosesItsPart();
  void aPartChosenElsewhereIsTheTablesRow();
  void choosingAPartOfAnotherWallChoosesThatWall();
  void choosingAnotherWallLetsGoOfThePart();
  void particularsSayWhatIsChosen();
  void theStatusLineSaysWhatIsChosen();
  void whatTheJobHasNotIsNotChosen();
  void escapeGoesOneStepBack();
  void f6GoesRoundThePanelsBothWays();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  int currentRow(const char* table) { return find<QTableView>(table)->currentIndex().row(); }
  Part piece(int index) {
    return {Part::Kind::Piece, session().chosenWall().letter,
            session().chosenPlan().layout.pieces[std::size_t(index)].mark};
  }

  std::unique_ptr<OpenWindow> window_;
};

void SelectionTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY(QTest::qWaitForWindowExposed(window_->window.get()));
  QVERIFY((*window_)->openJob(workshop()));
}

void SelectionTest::aWallChosenInTheStripIsChosenEverywhere() {
  for (std::size_t wall = 0; wall < window_->tiles().size(); ++wall) {
    QTest::mouseClick(window_->tiles()[wall], Qt::LeftButton);
    QCOMPARE(session().wall(), int(wall));
    for (std::size_t each = 0; each < window_->tiles().size(); ++each)
      QCOMPARE(window_->tiles()[each]->isChecked(), each == wall);
    QVERIFY(
        find<QLabel>("particularsTitle")->text().contains(QString::fromStdString(session().job().walls[wall].letter)));
  }
}

void SelectionTest::arrowKeysWalkTheStrip() {
  window_->tiles()[0]->setFocus();
  const int last = int(window_->tiles().size()) - 1;
  for (const auto& [key, wall] : {std::pair(Qt::Key_Right, 1),
                                  {Qt::Key_Left, 0},
                                  {Qt::Key_Left, 0},
                                  {Qt::Key_End, last},
                                  {Qt::Key_Right, last},
                                  {Qt::Key_Home, 0}}) {
    QTest::keyClick(window_->window->focusWidget(), key);
    QCOMPARE(session().wall(), wall);
    QCOMPARE(window_->window->focusWidget(), static_cast<QWidget*>(window_->tiles()[std::size_t(wall)]));
  }
}

void SelectionTest::aWallIsChosenInThePlan() {
  auto* plan = find<PlanInset>("plan");
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    for (std::size_t wall = session().job().walls.size(); wall-- > 0;) {
      QTest::mouseClick(plan, Qt::LeftButton, {}, plan->wallOnScreen(wall).center().toPoint());
      QVERIFY2(session().wall() == int(wall), qPrintable(path));
      QVERIFY(window_->tiles()[wall]->isChecked());
    }
  }
}

void SelectionTest::everyFindingLeadsToItsWallAndPart() {
  int parts = 0;
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    auto* list = find<QTreeWidget>("findings");
    for (int i = 0; i < list->topLevelItemCount(); ++i) {
      list->setCurrentItem(list->topLevelItem(i));
      const Finding& finding = session().plan().findings[std::size_t(i)];
      if (!finding.wall.empty()) QCOMPARE(session().chosenWall().letter, finding.wall);
      QVERIFY(session().chosen() == session().findingParts()[std::size_t(i)]);
      parts += session().chosen().has_value();
      QVERIFY(find<QPlainTextEdit>("findingWords")->toPlainText().contains("Do: "));
      QCOMPARE(list->currentItem(), list->topLevelItem(i));
    }
  }
  QVERIFY(parts > 5);
}

void SelectionTest::aRowOfATableChoosesItsPart() {
  auto* sheets = find<QTableView>("sheets");
  for (int row : {3, 0, sheets->model()->rowCount() - 1}) {
    sheets->setCurrentIndex(sheets->model()->index(row, 0));
    QVERIFY(session().chosen() == piece(row));
  }
  QVERIFY(!session().chosenWall().openings.empty());
  auto* openings = find<QTableView>("openingsTable");
  openings->setCurrentIndex(openings->model()->index(0, 0));
  QVERIFY(session().chosen() ==
          (Part{Part::Kind::Opening, session().chosenWall().letter, session().chosenWall().openings[0].id}));
  QCOMPARE(currentRow("sheets"), -1);
}

void SelectionTest::aPartChosenElsewhereIsTheTablesRow() {
  session().choose(piece(4));
  QCOMPARE(currentRow("sheets"), 4);
  session().choose(std::nullopt);
  QCOMPARE(currentRow("sheets"), -1);
  QVERIFY(!find<QTableView>("sheets")->selectionModel()->hasSelection());
}

void SelectionTest::choosingAPartOfAnotherWallChoosesThatWall() {
  session().chooseWall(1);
  const Part other = piece(2);
  session().chooseWall(0);
  session().choose(other);
  QCOMPARE(session().wall(), 1);
  QVERIFY(session().chosen() == other);
  QCOMPARE(currentRow("sheets"), 2);
}

void SelectionTest::choosingAnotherWallLetsGoOfThePart() {
  session().choose(piece(1));
  window_->tiles()[1]->click();
  QVERIFY(!session().chosen());
  QCOMPARE(currentRow("sheets"), -1);
}

void SelectionTest::particularsSayWhatIsChosen() {
  session().choose(piece(2));
  QVERIFY(find<QLabel>("particularsTitle")->text().contains(QString::fromStdString(piece(2).id)));
  const auto* rows = find<QTableWidget>("particulars");
  QVERIFY(rows->rowCount() > 3);
  for (int row = 0; row < rows->rowCount(); ++row) {
    QVERIFY(!rows->item(row, 0)->text().isEmpty());
    QVERIFY(!rows->item(row, 1)->text().isEmpty());
  }
}

void SelectionTest::theStatusLineSaysWhatIsChosen() {
  session().choose(piece(2));
  QVERIFY(find<ElidedLabel>("statusPart")->text().contains(QString::fromStdString(piece(2).id)));
  QCOMPARE(find<QLabel>("statusUnits")->text(), QString("feet and inches"));
}

void SelectionTest::whatTheJobHasNotIsNotChosen() {
  session().choose(piece(2));
  session().choose(Part{Part::Kind::Piece, "A", "no such mark"});
  QVERIFY(!session().chosen());
}

void SelectionTest::escapeGoesOneStepBack() {
  find<QAction>("asPrinted")->setChecked(false);
  find<QAction>("asPrinted")->trigger();
  session().choose(piece(2));
  QTest::keyClick(window_->window.get(), Qt::Key_Escape);
  QVERIFY(!session().chosen());
  QVERIFY(find<QAction>("asPrinted")->isChecked());
  QTest::keyClick(window_->window.get(), Qt::Key_Escape);
  QVERIFY(!find<QAction>("asPrinted")->isChecked());
  QTest::keyClick(window_->window.get(), Qt::Key_Escape);
  QVERIFY(session().isOpen());
}

void SelectionTest::f6GoesRoundThePanelsBothWays() {
  window_->tiles()[0]->setFocus();
  QList<QWidget*> seen;
  for (int i = 0; i < 6; ++i) {
    seen << window_->window->focusWidget();
    QTest::keyClick(window_->window.get(), Qt::Key_F6);
  }
  QCOMPARE(window_->window->focusWidget(), seen.front());
  QCOMPARE(QSet<QWidget*>(seen.begin(), seen.end()).size(), 6);
  for (int i = 5; i >= 0; --i) {
    QTest::keyClick(window_->window.get(), Qt::Key_F6, Qt::ShiftModifier);
    QCOMPARE(window_->window->focusWidget(), seen[i]);
  }
}

WINDOW_TEST(SelectionTest)
#include "selection_test.moc"
