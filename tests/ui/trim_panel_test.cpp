// Trim in the window: what is listed, what a choice brings into view, how it is cut, and where it comes from.
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

#include "core/takeoff/trim_cuts.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/job_dialog.h"
#include "ui/panels/order_tabs.h"
#include "ui/panels/trim_chart.h"
#include "ui/panels/trim_panel.h"

using namespace ribwright;

class TrimPanelTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    window_ = std::make_unique<OpenWindow>();
    QVERIFY((*window_)->openJob(workshop()));
    auto* dock = window_->find<QDockWidget>("orderDock");
    dock->show();
    dock->raise();
    window_->find<OrderTabs>("order")->setCurrentWidget(panel());
    QTRY_VERIFY(panel()->count() > 0);
    QTRY_VERIFY_WITH_TIMEOUT(!panel()->isCutting(), 60000);
  }
  void cleanup() { window_.reset(); }

  void everyPieceIsListedWithItsLength() {
    const TrimTakeoff takeoff = trimTakeoff(session().job(), session().plan().layouts());
    QCOMPARE(table()->rowCount(), int(takeoff.pieces.size()));
    for (int row = 0; row < table()->rowCount(); ++row)
      QCOMPARE(table()->item(row, 1)->text().toStdString(), takeoff.pieces[std::size_t(row)].id);
  }

  void aPieceThatIsChosenChoosesItsOpening() {
    const int row = rowWith("head");
    QVERIFY(row >= 0);
    table()->setCurrentCell(row, 0);
    QVERIFY(session().chosen());
    QVERIFY(session().chosen()->kind == Part::Kind::Opening);
    QCOMPARE(chart()->chosen(), row);
  }

  void aBarThatIsClickedChoosesItsPiece() {
    const int row = rowWith("eave");
    const int y = chart()->heightOf(row);
    for (int x = 0; x < chart()->width(); x += 3) {
      const int piece = chart()->pieceAt({x, y});
      if (piece < 0) continue;
      QTest::mouseClick(chart(), Qt::LeftButton, {}, {x, y});
      QCOMPARE(table()->currentRow(), piece);
      return;
    }
    QFAIL("no piece stands in the bar");
  }

  void whatIsBoughtIsSaidWithItsProof() {
    const QString summary = window_->find<QLabel>("trimSummary")->text();
    QVERIFY2(summary.contains('%'), qPrintable(summary));
    QVERIFY(!window_->find<QLabel>("trimProof")->text().isEmpty());
  }

  void theShippedTrimIsTakenAndGivenBack() {
    Job bare = session().job();
    bare.trims.clear();
    bare.trimRules.clear();
    session().apply("edit.building", bare);
    QTRY_COMPARE(panel()->count(), 0);
    auto* take = window_->find<QPushButton>("takeTrim");
    QVERIFY(take->isEnabled());
    take->click();
    QTRY_VERIFY(panel()->count() > 0);
    QVERIFY(!take->isEnabled());
    session().undo();
    QTRY_COMPARE(panel()->count(), 0);
  }

  void theRulesAreShownInTheJobDialog() {
    window_->find<QPushButton>("trimRules")->click();
    auto* dialog = window_->window->findChild<JobDialog*>();
    QVERIFY(dialog && dialog->isVisible());
    dialog->close();
  }

  void aPictureOfIt() {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    if (folder.isEmpty()) QSKIP("only with RIBWRIGHT_PICTURES");
    panel()->resize(1400, 500);
    panel()->grab().save(folder + "/trim-panel.png");
  }

 private:
  Session& session() const { return window_->session(); }
  TrimPanel* panel() const { return window_->find<TrimPanel>("trim"); }
  QTableWidget* table() const { return window_->find<QTableWidget>("trimTable"); }
  TrimChart* chart() const { return window_->find<TrimChart>("trimChart"); }
  int rowWith(const char* word) const {
    for (int row = 0; row < table()->rowCount(); ++row) {
      if (table()->item(row, 1)->text().contains(QLatin1String(word))) return row;
    }
    return -1;
  }

  std::unique_ptr<OpenWindow> window_;
};

WINDOW_TEST(TrimPanelTest)
#include "trim_panel_test.moc"
