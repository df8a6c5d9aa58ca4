// What is stated of the chosen wall, edited in its tables: typed, pasted, added, removed, sorted.
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QMimeData>
#include <QTabWidget>
#include <QTableView>

#include "core/job/by_id.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/row_order.h"
#include "ui/panels/stated_table.h"

using namespace ribwright;

class StatedTablesTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void aLengthIsTypedIntoItsCell();
  void enterGoesOnToTheNextCell();
  void whatCannotBeReadStaysAsItWasTyped();
  void aChoiceIsMadeFromItsList();
  void aNewRowStaysADraftUntilItIsWhole();
  void deleteRemovesTheChosenRowsAsOneStep();
  void anOpeningsNewNameIsFollowed();
  void rowsAreCopiedWithTheirHeaderAndPastedBack();
  void pastedCellsGoInTogetherOrNotAtAll();
  void newRowsCanBePasted();
  void rowsAreSortedAsLengthsAndNaturally();
  void theHeaderSortsByKeyboard();
  void anOrderChangesNothingOfTheJob();
  void severalRowsAreChosenBothWays();
  void drawnColumnsAreRemembered();
  void girtsBandsAndPenetrationsAreTypedToo();
  void sheetsThatAnEditChangedAreMarked();
  void everyTableHasItsNames();

 private:
  Session& session() { return window_->session(); }
  StatedTable* table(const char* name = "openingsTable") {
    auto* found = window_->find<StatedTable>(name);
    auto* tabs = window_->find<QTabWidget>("tables");
    for (int i = 0; i < tabs->count(); ++i) {
      if (tabs->widget(i)->isAncestorOf(found)) tabs->setCurrentIndex(i);
    }
    found->setFocus();
    return found;
  }
  static int column(const QTableView* of, const QString& title) {
    for (int i = 0; i < of->model()->columnCount(); ++i) {
      if (of->model()->headerData(i, Qt::Horizontal).toString() == title) return i;
    }
    return -1;
  }
  static void goTo(QTableView* of, int row, const QString& title) {
    of->setCurrentIndex(of->model()->index(row, column(of, title)));
  }
  static QString shown(const QTableView* of, int row, const QString& title) {
    return of->model()->index(row, column(of, title)).data().toString();
  }
  static QWidget* editor(const QTableView* of) { return of->viewport()->findChild<QWidget*>("cellEditor"); }
  // Begins the cell at hand and enters.
  static void type(QTableView* of, const QString& words) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // editors that were left
    QTest::keyClick(of, Qt::Key_F2);
    QWidget* typed = editor(of);
    if (auto* list = qobject_cast<QComboBox*>(typed)) typed = list->lineEdit();
    auto* line = qobject_cast<QLineEdit*>(typed);
    QVERIFY(line);
    line->selectAll();
    QTest::keyClicks(line, words);
    QTest::keyClick(line, Qt::Key_Return);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  void typeInto(QTableView* of, int row, const QString& title, const QString& words) {
    goTo(of, row, title);
    type(of, words);
    session().settle();
  }
  QString words(const char* name) { return window_->find<ElidedLabel>(name)->text(); }
  const std::vector<Opening>& openings() { return session().chosenWall().openings; }
  std::size_t steps() { return session().history()->size(); }

  std::unique_ptr<OpenWindow> window_;
};

void StatedTablesTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
  const auto& walls = session().job().walls;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    if (walls[i].openings.size() >= 3) session().chooseWall(int(i));
  }
  QVERIFY(openings().size() >= 2);
}

void StatedTablesTest::aLengthIsTypedIntoItsCell() {
  StatedTable* of = table();
  const Length before = openings()[0].width;
  typeInto(of, 0, "Width", "2' + 7\"");
  QVERIFY(openings()[0].width == Length::inches(31));
  QCOMPARE(shown(of, 0, "Width"), QString("2' 7\""));
  QVERIFY(QString::fromStdString(session().history()->undoName()).contains("Width of"));
  session().undo();
  session().settle();
  QVERIFY(openings()[0].width == before);
}

void StatedTablesTest::enterGoesOnToTheNextCell() {
  StatedTable* of = table();
  typeInto(of, 0, "Width", "31");
  QCOMPARE(of->currentIndex(), of->model()->index(0, column(of, "Height")));
  goTo(of, 0, "Jamb trim");  // what follows from the rest is passed over
  QTest::keyClick(of, Qt::Key_Return);
  QCOMPARE(of->currentIndex(), of->model()->index(1, 0));
  QTest::keyClick(of, Qt::Key_Return, Qt::ShiftModifier);
  QCOMPARE(of->currentIndex(), of->model()->index(0, column(of, "Jamb trim")));
}

void StatedTablesTest::whatCannotBeReadStaysAsItWasTyped() {
  StatedTable* of = table();
  const Job before = session().job();
  typeInto(of, 0, "Width", "3x");
  QVERIFY(session().newest() == before);
  QVERIFY(editor(of));
  QVERIFY(words("openingsTableWords").startsWith("▲"));
  QVERIFY(words("openingsTableWords").contains("\"3x\""));
  QTest::keyClick(editor(of), Qt::Key_Tab);  // it does not go on
  QCOMPARE(of->currentIndex(), of->model()->index(0, column(of, "Width")));
  of->setFocus();
  goTo(of, 1, "Width");
  const QModelIndex cell = of->model()->index(0, column(of, "Width"));
  QCOMPARE(cell.data().toString(), QString("? 3x"));
  QVERIFY(cell.data(Qt::ToolTipRole).toString().contains("\"3x\""));
  QVERIFY(cell.data(Qt::FontRole).value<QFont>().italic());
  typeInto(of, 0, "Width", "3'");
  QCOMPARE(shown(of, 0, "Width"), QString("3' 0\""));
}

void StatedTablesTest::aChoiceIsMadeFromItsList() {
  StatedTable* of = table();
  goTo(of, 0, "From");
  QTest::keyClick(of, Qt::Key_F2);
  auto* list = qobject_cast<QComboBox*>(editor(of));
  QVERIFY(list);
  QVERIFY(list->findText("right corner") >= 0);
  QVERIFY(list->findText("column 1") >= 0);
  QTest::keyClick(list->lineEdit(), Qt::Key_Escape);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  typeInto(of, 0, "From", "Right Corner");
  QVERIFY(openings()[0].place.from == Anchor::From::RightCorner);
  // A letter begins the cell and finds the first that begins with it.
  goTo(of, 0, "From");
  QTest::keyClick(of, 'l');
  list = qobject_cast<QComboBox*>(editor(of));
  QVERIFY(list);
  QCOMPARE(list->currentText(), QString("left corner"));
  QTest::keyClick(list->lineEdit(), Qt::Key_Return);
  session().settle();
  QVERIFY(openings()[0].place.from == Anchor::From::LeftCorner);
  QCOMPARE(of->currentIndex(), of->model()->index(0, column(of, "Distance")));
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  typeInto(of, 0, "From", "right corner");
  typeInto(of, 0, "From", "column 99");
  QVERIFY(openings()[0].place.from == Anchor::From::RightCorner);
  QVERIFY(words("openingsTableWords").contains("is none of"));
}

void StatedTablesTest::aNewRowStaysADraftUntilItIsWhole() {
  StatedTable* of = table();
  const std::size_t count = openings().size(), before = steps();
  const int last = of->model()->rowCount() - 1;
  QCOMPARE(last, int(count));
  typeInto(of, last, "Distance", "3'");
  typeInto(of, last, "Width", "2'");
  QVERIFY(openings().size() == count);
  QCOMPARE(shown(of, last, "Distance"), QString("3'"));
  typeInto(of, last, "Height", "2z");
  QVERIFY(openings().size() == count);
  of->setFocus();
  typeInto(of, last, "Height", "2'");
  QVERIFY(openings().size() == count + 1);
  QVERIFY(openings().back().height == Length::feet(2));
  QVERIFY(steps() == before + 1);
  QCOMPARE(of->model()->rowCount(), last + 2);
  QCOMPARE(of->currentIndex(), of->model()->index(last + 1, 0));  // where the next one is typed
  QCOMPARE(shown(of, last + 1, "Distance"), QString());
}

void StatedTablesTest::deleteRemovesTheChosenRowsAsOneStep() {
  StatedTable* of = table();
  const std::size_t count = openings().size(), before = steps();
  of->setCurrentIndex(of->model()->index(0, 0));
  of->selectionModel()->select(of->model()->index(1, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
  QTest::keyClick(of, Qt::Key_Delete);
  session().settle();
  QVERIFY(openings().size() == count - 2);
  QVERIFY(steps() == before + 1);
  session().undo();
  session().settle();
  QVERIFY(openings().size() == count);
}

void StatedTablesTest::anOpeningsNewNameIsFollowed() {
  StatedTable* of = table();
  Job job = session().job();
  const auto wall = std::size_t(session().wall());
  job.walls[wall].start.rule = Start::Rule::SeamAtJamb;
  job.walls[wall].start.opening = job.walls[wall].openings[0].id;
  session().apply("Start at a jamb", job);
  session().settle();
  typeInto(of, 0, "Id", "Q9");
  QVERIFY(session().chosenWall().start.opening == "Q9");
  typeInto(of, 1, "Id", "Q9");
  QVERIFY(words("openingsTableWords").startsWith("▲"));
  QVERIFY(openings()[1].id != "Q9");
}

void StatedTablesTest::rowsAreCopiedWithTheirHeaderAndPastedBack() {
  StatedTable* of = table();
  of->selectAll();
  of->setCurrentIndex(of->model()->index(0, 0));
  of->selectionModel()->select(of->model()->index(1, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
  QTest::keyClick(of, Qt::Key_C, Qt::ControlModifier);
  const QString copied = QGuiApplication::clipboard()->text();
  const QStringList lines = copied.trimmed().split('\n');
  QCOMPARE(lines.size(), 3);
  QVERIFY(lines[0].startsWith("Id\tKind\tFrom\tDistance\t"));
  QVERIFY(lines[1].startsWith(QString::fromStdString(openings()[0].id) + '\t'));
  QVERIFY(lines[1].contains(shown(of, 0, "Width")));
  QVERIFY(QGuiApplication::clipboard()->mimeData()->html().contains("<th>Id</th>"));
  // Onto itself: nothing changes, and with another width all of it goes in as one step.
  const Job before = session().job();
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  QVERIFY(session().newest() == before);
  QVERIFY2(!words("openingsTableWords").startsWith("▲"), qPrintable(words("openingsTableWords")));
  QString changed = copied;
  changed.replace(shown(of, 0, "Width"), "17\"");
  QGuiApplication::clipboard()->setText(changed);
  goTo(of, 0, "Sill");  // titles say which column is which
  const std::size_t stepsBefore = steps();
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  session().settle();
  QVERIFY(openings()[0].width == Length::inches(17));
  QVERIFY(steps() == stepsBefore + 1);
}

void StatedTablesTest::pastedCellsGoInTogetherOrNotAtAll() {
  StatedTable* of = table();
  const Job before = session().job();
  QGuiApplication::clipboard()->setText("30\t40\r\n5q\t41\r\n");
  goTo(of, 0, "Width");
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  QVERIFY(session().newest() == before);
  QVERIFY(words("openingsTableWords").contains("row 2, Width: \"5q\""));
  QGuiApplication::clipboard()->setText("30\t40\r\n31\t41\r\n");
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  session().settle();
  QVERIFY(openings()[0].width == Length::inches(30));
  QVERIFY(openings()[1].height == Length::inches(41));
  session().undo();
  session().settle();
  QVERIFY(session().job() == before);
  QGuiApplication::clipboard()->setText("1\t2\t3\t4\t5\t6\n");
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  QVERIFY(session().newest() == before);
  QVERIFY(words("openingsTableWords").startsWith("▲"));
}

void StatedTablesTest::newRowsCanBePasted() {
  StatedTable* of = table();
  const std::size_t count = openings().size();
  QGuiApplication::clipboard()->setText(
      "X1\twindow\tleft corner\t1'\tnear jamb\t2'\t2'\nX2\tlouvre\tcolumn 1\t4'\tcentre\t2'\t\n");
  goTo(of, int(count), "Id");
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  QVERIFY(openings().size() == count);
  QVERIFY(words("openingsTableWords").contains("Height: is blank"));
  QGuiApplication::clipboard()->setText(
      "X1\twindow\tleft corner\t1'\tnear jamb\t2'\t2'\nX2\tlouvre\tcolumn 1\t4'\tcentre\t2'\t2'\n");
  QTest::keyClick(of, Qt::Key_V, Qt::ControlModifier);
  session().settle();
  QVERIFY(openings().size() == count + 2);
  QVERIFY(openings().back().kind == Opening::Kind::Louvre);
}

void StatedTablesTest::rowsAreSortedAsLengthsAndNaturally() {
  QVERIFY(naturallyBefore("W2", "W10"));
  QVERIFY(!naturallyBefore("W10", "W2"));
  QVERIFY(naturallyBefore("a2.10", "A3.1"));
  QVERIFY(!naturallyBefore("W02", "W2"));
  QVERIFY(lengthBefore("9'", "10' 1\"", {}));
  QVERIFY(lengthBefore("11\"", "1' 0\"", {}));
  QVERIFY(lengthBefore("1' 0\"", "?", {}));
  auto* sheets = window_->find<QTableView>("sheets");
  const int blank = column(sheets, "Blank");
  for (const Qt::SortOrder order : {Qt::AscendingOrder, Qt::DescendingOrder}) {
    sheets->horizontalHeader()->setSortIndicator(blank, order);
    for (int row = 1; row < sheets->model()->rowCount(); ++row) {
      const auto at = [&](int i) {
        return parseLength(sheets->model()->index(i, blank).data().toString().toStdString(), {}).value();
      };
      QVERIFY(order == Qt::AscendingOrder ? at(row - 1) <= at(row) : at(row - 1) >= at(row));
    }
  }
}

void StatedTablesTest::theHeaderSortsByKeyboard() {
  auto* sheets = window_->find<QTableView>("sheets");
  window_->find<QTabWidget>("tables")->setCurrentWidget(sheets);
  auto* header = sheets->horizontalHeader();
  header->setFocus();
  QTest::keyClick(header, Qt::Key_Space);
  QCOMPARE(header->sortIndicatorSection(), 0);
  QTest::keyClick(header, Qt::Key_Right);
  QTest::keyClick(header, Qt::Key_Right);
  QTest::keyClick(header, Qt::Key_Return);
  QCOMPARE(header->sortIndicatorSection(), 2);
  QCOMPARE(header->sortIndicatorOrder(), Qt::AscendingOrder);
  QTest::keyClick(header, Qt::Key_Return);
  QCOMPARE(header->sortIndicatorOrder(), Qt::DescendingOrder);
  QTest::keyClick(header, Qt::Key_Return);
  QCOMPARE(header->sortIndicatorSection(), -1);
  QVERIFY(sheets->model()->index(0, 0).data().toString() ==
          QString::fromStdString(session().chosenPlan().layout.pieces[0].mark));
}

void StatedTablesTest::anOrderChangesNothingOfTheJob() {
  StatedTable* of = table();
  const Job before = session().job();
  of->horizontalHeader()->setSortIndicator(0, Qt::DescendingOrder);
  QVERIFY(session().newest() == before);
  const std::string first = shown(of, 0, "Id").toStdString();
  QVERIFY(first != before.walls[std::size_t(session().wall())].openings[0].id);
  typeInto(of, 0, "Width", "17");  // of the one that is seen there
  QVERIFY(byId(openings(), first)->width == Length::inches(17));
  QCOMPARE(shown(of, 0, "Id").toStdString(), first);
}

void StatedTablesTest::severalRowsAreChosenBothWays() {
  StatedTable* of = table();
  of->setCurrentIndex(of->model()->index(0, 0));
  of->selectionModel()->select(of->model()->index(1, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
  QVERIFY(session().chosenParts().size() == 2);
  const std::string wall = session().chosenWall().letter;
  session().chooseParts({{Part::Kind::Opening, wall, openings()[1].id}});
  QCOMPARE(of->selectionModel()->selectedRows().size(), 1);
  QCOMPARE(of->currentIndex().row(), 1);
  session().chooseParts({{Part::Kind::Opening, wall, openings()[1].id}, {Part::Kind::Opening, wall, openings()[0].id}});
  QCOMPARE(of->selectionModel()->selectedRows().size(), 2);
  QCOMPARE(of->currentIndex().row(), 0);
}

void StatedTablesTest::drawnColumnsAreRemembered() {
  auto* header = table()->horizontalHeader();
  const int wide = header->sectionSize(1) + 77;
  header->resizeSection(1, wide);
  QTest::qWait(600);
  window_->renew();
  QVERIFY((*window_)->openJob(workshop()));
  QVERIFY(qAbs(table()->horizontalHeader()->sectionSize(1) - wide) <= 1);
  QCOMPARE(window_->find<QTableView>("girtsTable")->horizontalHeader()->sectionSize(1) == wide, false);
}

void StatedTablesTest::girtsBandsAndPenetrationsAreTypedToo() {
  StatedTable* girts = table("girtsTable");
  const std::size_t count = session().chosenWall().girts.size();
  typeInto(girts, int(count), "Height", "2' 2\"");
  QVERIFY(session().chosenWall().girts.size() == count + 1);
  QCOMPARE(shown(girts, 0, "From"), QString("corner"));
  StatedTable* bands = table("bandsTable");
  typeInto(bands, 0, "Colour", "barn red");
  QVERIFY(session().chosenWall().bands[0].colour == "barn red");
  goTo(bands, 0, "Colour");
  QTest::keyClick(bands, Qt::Key_Delete);
  QVERIFY(session().chosenWall().bands.size() == 1);
  QVERIFY(words("bandsTableWords").contains("Nothing was removed"));
  StatedTable* holes = table("penetrationsTable");
  const int last = holes->model()->rowCount() - 1;
  typeInto(holes, last, "Distance", "4'");
  typeInto(holes, last, "Centre height", "6'");
  typeInto(holes, last, "Width", "8");
  QVERIFY(int(session().chosenWall().penetrations.size()) == last + 1);
}

void StatedTablesTest::sheetsThatAnEditChangedAreMarked() {
  auto* sheets = window_->find<QTableView>("sheets");
  const auto marked = [&] {
    QStringList marks;
    for (int row = 0; row < sheets->model()->rowCount(); ++row) {
      if (shown(sheets, row, "By the last edit").startsWith("●")) marks << shown(sheets, row, "Mark");
    }
    return marks;
  };
  QVERIFY(marked().isEmpty());
  typeInto(table(), 0, "Height", "6' 1\"");
  QVERIFY(!marked().isEmpty());
  QVERIFY(marked().size() < sheets->model()->rowCount());
}

void StatedTablesTest::everyTableHasItsNames() {
  for (const char* name : {"openingsTable", "penetrationsTable", "girtsTable", "bandsTable"}) {
    StatedTable* of = table(name);
    QVERIFY(!of->accessibleName().isEmpty());
    for (int i = 0; i < of->model()->columnCount(); ++i)
      QVERIFY2(!of->model()->headerData(i, Qt::Horizontal).toString().isEmpty(), name);
    QVERIFY(of->hasFocus());
  }
}

WINDOW_TEST(StatedTablesTest)
#include "stated_tables_test.moc"
