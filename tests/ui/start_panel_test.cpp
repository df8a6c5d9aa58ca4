// Starts compared in the window: what the table says, what is seen while one is pointed at, what a choice does.
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <set>

#include "core/output/figures.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/start_panel.h"

using namespace ribwright;

class StartPanelTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    window_ = std::make_unique<OpenWindow>();
    QVERIFY((*window_)->openJob(workshop()));
    panel()->parentWidget();
    window_->find<QTabWidget>("tables")->setCurrentWidget(panel());
    QTRY_VERIFY(panel()->count() > 0);
  }
  void cleanup() { window_.reset(); }

  void everyFigureIsWhatAFreshPlanGives() {
    const Job job = session().job();
    const auto all = comparedStarts(job, plan(job), 0);
    QCOMPARE(table()->rowCount(), int(all.size()));
    for (std::size_t i = 0; i < all.size(); ++i) {
      const Plan fresh = plan(withStart(job, 0, all[i].start));
      const int row = int(i);
      QCOMPARE(figure(row, 4), QString::number(fresh.walls[0]->layout.pieces.size()));
      std::set<Length> lengths;
      Area steel;
      for (const Piece& piece : fresh.walls[0]->layout.pieces) {
        lengths.insert(piece.blankLength);
        steel += piece.blankLength * job.profiles[0].metalWidth();
      }
      QCOMPARE(figure(row, 5), QString::number(lengths.size()));
      QVERIFY(figure(row, 10).startsWith(QString::fromStdString(areaText(steel, job.units))));
      int stops = 0, looks = 0;
      for (const Finding& finding : fresh.findings) {
        if (finding.wall != "A") continue;
        stops += finding.grade == Grade::Stop;
        looks += finding.grade == Grade::Look;
      }
      QCOMPARE(figure(row, 8), QString::number(stops));
      QCOMPARE(figure(row, 9), QString::number(looks));
    }
  }

  void theBestOfAColumnIsMarkedWithoutColour() {
    int least = 1000, marked = 0;
    for (int row = 0; row < table()->rowCount(); ++row) least = std::min(least, figure(row, 4).toInt());
    for (int row = 0; row < table()->rowCount(); ++row) {
      const bool best = table()->item(row, 4)->text().startsWith(QStringLiteral("●"));
      QCOMPARE(best, figure(row, 4).toInt() == least && !allAlike(4));
      marked += best;
    }
    QVERIFY(marked > 0 || allAlike(4));
  }

  void theArrowKeysShowAStartAndEscGoesBack() {
    const std::size_t states = session().history()->size();
    table()->setFocus();
    const int standing = table()->currentRow();
    QVERIFY(table()->item(standing, 1)->text().startsWith(QStringLiteral("▶")));
    const auto step = standing > 0 ? Qt::Key_Up : Qt::Key_Down;
    QTest::keyClick(table(), step);
    QVERIFY(session().isPreview());
    QVERIFY(!(startOf(session().seenJob().walls[0]) == startOf(session().job().walls[0])));
    QTest::keyClick(table(), Qt::Key_Escape);
    QVERIFY(!session().isPreview());
    QCOMPARE(session().history()->size(), states);
    QVERIFY(session().history()->isSaved());
  }

  void pointingShowsAndLeavingEnds() {
    const int other = table()->currentRow() == 0 ? 1 : 0;
    emit table()->cellEntered(other, 1);
    QVERIFY(session().isPreview());
    QEvent leave(QEvent::Leave);
    QApplication::sendEvent(table()->viewport(), &leave);
    QVERIFY(!session().isPreview());
    QCOMPARE(session().history()->size(), std::size_t(1));
  }

  void enterChoosesAsOneNamedStep() {
    table()->setFocus();
    int row = 0;
    while (!table()->item(row, 1)->text().startsWith("equal rips")) ++row;
    table()->setCurrentCell(row, 0);
    QTest::keyClick(table(), Qt::Key_Return);
    QCOMPARE(session().newest().walls[0].start.rule, Start::Rule::EqualRips);
    QCOMPARE(QString::fromStdString(session().history()->undoName()),
             QStringLiteral("Start wall A with equal rips at both ends"));
    QCOMPARE(session().history()->size(), std::size_t(2));
    QVERIFY(!session().isPreview());
    QTRY_VERIFY(standing().contains("equal rips"));
    session().undo();
    QTRY_VERIFY(!standing().contains("equal rips"));
  }

  void everyStartIsTriedAndOffered() {
    window_->find<QPushButton>("searchStarts")->click();
    auto* take = window_->find<QPushButton>("takeStart");
    QTRY_VERIFY_WITH_TIMEOUT(!take->isHidden(), 60000);
    const auto whole = searchStarts(session().job(), 0, [](double) { return true; });
    take->click();
    QVERIFY(session().newest().walls[0].start == *whole.best);
    QCOMPARE(session().history()->size(), std::size_t(2));
  }

  void aSearchCanBeStopped() {
    window_->find<QPushButton>("searchStarts")->click();
    window_->find<QPushButton>("stopSearch")->click();
    auto* search = window_->find<QPushButton>("searchStarts");
    QTRY_VERIFY(search->isEnabled());
    QVERIFY(window_->find<QPushButton>("stopSearch")->isHidden());
    QCOMPARE(session().history()->size(), std::size_t(1));
  }

  void anotherWallIsAnotherTable() {
    session().chooseWall("B");
    QTRY_VERIFY(panel()->count() > 0);
    bool ridge = false;
    for (int row = 0; row < table()->rowCount(); ++row)
      ridge = ridge || table()->item(row, 1)->text().contains("ridge");
    QVERIFY(ridge);
  }

  void itSortsByFigures() {
    table()->sortByColumn(4, Qt::DescendingOrder);
    for (int row = 1; row < table()->rowCount(); ++row) QVERIFY(figure(row, 4).toInt() <= figure(row - 1, 4).toInt());
  }

 private:
  Session& session() const { return window_->session(); }
  StartPanel* panel() const { return window_->find<StartPanel>("starts"); }
  QTableWidget* table() const { return window_->find<QTableWidget>("startTable"); }
  QString figure(int row, int column) const { return table()->item(row, column)->text().remove(QStringLiteral("● ")); }
  bool allAlike(int column) const {
    for (int row = 1; row < table()->rowCount(); ++row) {
      if (figure(row, column) != figure(0, column)) return false;
    }
    return true;
  }
  QString standing() const {
    for (int row = 0; row < table()->rowCount(); ++row) {
      if (table()->item(row, 1)->text().startsWith(QStringLiteral("▶"))) return table()->item(row, 1)->text();
    }
    return {};
  }

  std::unique_ptr<OpenWindow> window_;
};

WINDOW_TEST(StartPanelTest)
#include "start_panel_test.moc"
