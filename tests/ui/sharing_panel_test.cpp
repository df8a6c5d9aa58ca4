// Sharing of blanks in the window: what is saved, switched on and off as edits, the chosen blank's drawing.
#include "ui/panels/sharing_panel.h"
#include "tests/ui/window_tests.h"

#include <QCheckBox>
#include <QDockWidget>
#include <QLabel>
#include <QTableWidget>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "ui/panels/blank_view.h"
#include "ui/panels/calm_combo.h"
#include "ui/panels/order_tabs.h"

using namespace ribwright;

class SharingPanelTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    window_ = std::make_unique<OpenWindow>();
    QVERIFY((*window_)->openJob(samples().filePath("metric-hall.json")));
    dock()->show();
    dock()->raise();
    window_->find<OrderTabs>("order")->setCurrentWidget(panel());
    QTRY_VERIFY(panel()->isVisible());
  }
  void cleanup() { window_.reset(); }

  void offItSaysWhatEachKindWouldSave() {
    QCOMPARE(table()->rowCount(), 0);
    const QString savings = window_->find<QLabel>("sharingSavings")->text();
    for (const WaySaving& saving : savingsByWay(session().job(), session().plan().layouts())) {
      if (saving.blanks > 0)
        QVERIFY(savings.contains(QString::fromStdString(exactText(saving.saved, session().job().units))));
    }
    QVERIFY(savings.contains(QStringLiteral("nothing")));
  }

  void switchedOnItListsTheBlanksAndUndoTakesThatBack() {
    switchOn();
    const auto blanks = sharedBlanks(session().job(), session().plan().layouts(), session().plan().order);
    QVERIFY(!blanks.empty());
    QCOMPARE(table()->rowCount(), int(blanks.size()));
    QCOMPARE(table()->item(0, 1)->text().section(' ', 0, 0), QString::fromStdString(blanks[0].marks[0]));
    session().undo();
    session().settle();
    QVERIFY(session().job().settings.sharing.reach == Sharing::Reach::Off);
    QTRY_COMPARE(table()->rowCount(), 0);
  }

  void theChosenBlankIsDrawnWithTheMarksOfItsParts() {
    switchOn();
    QVERIFY(table()->rowCount() > 1);
    table()->setCurrentCell(1, 0);
    const auto blanks = sharedBlanks(session().job(), session().plan().layouts(), session().plan().order);
    for (const std::string& mark : blanks[1].marks) QVERIFY(drawn(mark));
    QVERIFY(!window_->find<BlankView>("blankView")->accessibleDescription().isEmpty());
  }

  void aKindSwitchedOffGivesNoBlanks() {
    switchOn();
    auto* drops = window_->find<QCheckBox>("field:settings.sharing.drops");
    QVERIFY(drops);
    drops->click();
    session().settle();
    QVERIFY(!session().job().settings.sharing.drops);
    for (int row = 0; row < table()->rowCount(); ++row)
      QVERIFY(table()->item(row, 2)->text() != QStringLiteral("short beyond long"));
  }

  void wallByWallItAsksWhichWalls() {
    choose("per wall");
    QCOMPARE(table()->rowCount(), 0);
    auto* box = window_->find<QCheckBox>("sharesWallA");
    QVERIFY(box && box->isVisible());
    box->click();
    session().settle();
    QVERIFY(session().job().walls.front().shares);
    session().undo();
    session().settle();
    QVERIFY(!session().job().walls.front().shares);
    QTRY_VERIFY(!box->isChecked());
  }

 private:
  Session& session() { return window_->session(); }
  SharingPanel* panel() { return window_->find<SharingPanel>("sharing"); }
  QTableWidget* table() { return window_->find<QTableWidget>("sharingTable"); }
  QDockWidget* dock() { return window_->find<QDockWidget>("orderDock"); }

  void choose(const char* word) {
    auto* reach = window_->find<QComboBox>("field:settings.sharing.reach");
    QVERIFY(reach);
    const int at = reach->findText(QLatin1String(word), Qt::MatchContains);
    QVERIFY(at >= 0);
    reach->setCurrentIndex(at);
    emit reach->activated(at);
    session().settle();
  }
  void switchOn() {
    choose("on");
    QTRY_VERIFY(table()->rowCount() > 0);
  }

  bool drawn(const std::string& mark) {
    for (const Item& item : window_->find<BlankView>("blankView")->drawing().items) {
      const Text* text = std::get_if<Text>(&item);
      if (text && text->words.find(mark) != std::string::npos) return true;
    }
    return false;
  }

  std::unique_ptr<OpenWindow> window_;
};

WINDOW_TEST(SharingPanelTest)
#include "sharing_panel_test.moc"
