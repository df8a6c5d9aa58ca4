// The building resized in the window.
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>

#include "core/editing/building_edits.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/building_dialog.h"

using namespace ribwright;

class BuildingTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    window_ = std::make_unique<OpenWindow>();
    QVERIFY((*window_)->openJob(workshop()));
  }
  void cleanup() { window_.reset(); }

  void itIsSeenWhileItIsTypedAndOneStepWhenDone() {
    Session& session = window_->session();
    {
      BuildingDialog dialog(session);
      QVERIFY(!dialog.findChild<QPushButton*>("buildingChange")->isEnabled());
      type(dialog, "buildingLength", "80'");
      QVERIFY(session.isPreview());
      QCOMPARE(session.seenPlan().walls[0]->layout.face.width, Length::feet(80));
      QCOMPARE(session.history()->size(), std::size_t(1));
      dialog.findChild<QPushButton*>("buildingChange")->click();
      QCOMPARE(dialog.result(), int(QDialog::Accepted));
    }
    QVERIFY(!session.isPreview());
    QCOMPARE(buildingSize(session.newest()).value().length, Length::feet(80));
    QCOMPARE(session.history()->size(), std::size_t(2));
    QCOMPARE(session.history()->undoName(), std::string("Change the building"));
    session.undo();
    QCOMPARE(buildingSize(session.newest()).value().length, Length::feet(60));
  }

  void cancelledItLeavesNoTrace() {
    {
      BuildingDialog dialog(window_->session());
      type(dialog, "buildingEave", "14'");
      QVERIFY(window_->session().isPreview());
      dialog.reject();
    }
    QVERIFY(!window_->session().isPreview());
    QCOMPARE(window_->session().history()->size(), std::size_t(1));
  }

  void aFaultStandsAtItsField() {
    BuildingDialog dialog(window_->session());
    type(dialog, "buildingWidth", "4x");
    QVERIFY(!dialog.findChild<QLabel*>("buildingWidthFault")->isHidden());
    QVERIFY(dialog.findChild<QLabel*>("buildingLengthFault")->isHidden());
    QVERIFY(!dialog.findChild<QPushButton*>("buildingChange")->isEnabled());
  }

  void whatLosesItsPlaceIsListedAndPutWhereItFitsOnlyWhenAsked() {
    BuildingDialog dialog(window_->session());
    auto* words = dialog.findChild<QLabel*>("buildingDisplaced");
    QVERIFY(words->isHidden());
    type(dialog, "buildingLength", "50'");
    QVERIFY(!words->isHidden());
    QVERIFY(words->text().contains("W1"));
    QVERIFY(words->text().contains("W6"));
    QCOMPARE(displaced(window_->session().seenJob()).size(), std::size_t(2));
    auto* fit = dialog.findChild<QCheckBox*>("buildingFit");
    QVERIFY(!fit->isHidden() && !fit->isChecked());
    fit->setChecked(true);
    QVERIFY(displaced(window_->session().seenJob()).empty());
    fit->setChecked(false);
    dialog.findChild<QPushButton*>("buildingChange")->click();
    QCOMPARE(window_->session().newest().walls[0].openings.size(), std::size_t(3));
    QCOMPARE(displaced(window_->session().newest()).size(), std::size_t(2));
  }

  void theMenuOpensIt() {
    QTimer::singleShot(0, this, [] {
      auto* dialog = qobject_cast<BuildingDialog*>(QApplication::activeModalWidget());
      QVERIFY(dialog);
      dialog->reject();
    });
    auto* action = window_->find<QAction>("building");
    QVERIFY(action->isEnabled());
    action->trigger();
  }

 private:
  static void type(const QDialog& dialog, const char* name, const char* words) {
    auto* edit = dialog.findChild<QLineEdit*>(QLatin1String(name));
    edit->selectAll();
    QTest::keyClicks(edit, QLatin1String(words));
  }

  std::unique_ptr<OpenWindow> window_;
};

WINDOW_TEST(BuildingTest)
#include "building_test.moc"
