// A job begun in the window: its dialog, its defaults, its samples.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTimer>

#include "core/editing/new_job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/kept_new_job.h"
#include "ui/panels/new_job_dialog.h"
#include "ui/panels/new_job_picture.h"

using namespace ribwright;

class NewJobTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    settings_ = std::make_unique<QTemporaryDir>();
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings_->path());
    NewJob stated = shippedNewJob(UnitSystem::FeetInches);  // whatever the machine measures in
    QVERIFY(keepNewJob(stated).empty());
  }

  void typedFromTopToBottomItIsAJob() {
    NewJobDialog dialog;
    dialog.show();
    dialog.activateWindow();  // no window manager does it in tests
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    QCOMPARE(dialog.focusWidget()->objectName(), QStringLiteral("newName"));
    int entries = 0, enters = 0;
    const auto type = [&](const char* words) {
      if (*words) QTest::keyClicks(dialog.focusWidget(), QLatin1String(words)), ++entries;
      QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
      ++enters;
    };
    type("Barn");
    type("");
    type("40'");
    type("60'");
    QCOMPARE(field(dialog, "newSideBays")->text(), QStringLiteral("2@20' 0\""));
    type("12'");
    type("4:12");
    type("2@20'");
    type("3@20'");
    type("3'-6\", 7'-4\"");
    while (dialog.focusWidget()->objectName() != QLatin1String("newMake") && enters < 40) type("");
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
    qInfo("entries %d, Enter %d times", entries, enters + 1);
    QCOMPARE(dialog.result(), int(QDialog::Accepted));
    const Job& job = *dialog.job();
    QCOMPARE(job.name, std::string("Barn"));
    QCOMPARE(job.building.outline[2], (PlanPoint{Length::feet(40), Length::feet(60)}));
    QCOMPARE(job.walls[1].columns.bays.size(), std::size_t(3));
    QCOMPARE(job.walls[0].girts[1].height, Length::feet(7, 4));
    QVERIFY(entries <= 12);
    QVERIFY(enters < 20);
  }

  void aFaultStandsAtItsFieldAndThePictureStays() {
    NewJobDialog dialog;
    dialog.show();
    auto* picture = dialog.findChild<NewJobPicture*>("newPicture");
    const Job before = picture->session().job();
    type(dialog, "newEave", "12x");
    QTRY_VERIFY(!dialog.findChild<QLabel*>("newEaveFault")->isHidden());
    QVERIFY(dialog.findChild<QLabel*>("newEaveFault")->text().contains("12x"));
    QVERIFY(dialog.findChild<QLabel*>("newSideGirtsFault")->isHidden());
    QVERIFY(!dialog.findChild<QLabel*>("newBehind")->isHidden());
    QVERIFY(picture->session().job() == before);
    dialog.findChild<QPushButton*>("newMake")->click();
    QVERIFY(dialog.isVisible() && !dialog.job());
    QCOMPARE(field(dialog, "newEave")->text(), QStringLiteral("12x"));
    type(dialog, "newEave", "14'");
    QTRY_VERIFY(dialog.findChild<QLabel*>("newEaveFault")->isHidden());
    QCOMPARE(picture->session().job().building.roof.eave, Length::feet(14));
  }

  void baysFollowTheBuildingUntilTheyAreTyped() {
    NewJobDialog dialog;
    dialog.show();
    type(dialog, "newLength", "100'");
    QCOMPARE(field(dialog, "newSideBays")->text(), QStringLiteral("4@25' 0\""));
    type(dialog, "newSideBays", "5@20'");
    type(dialog, "newLength", "110'");
    QCOMPARE(field(dialog, "newSideBays")->text(), QStringLiteral("5@20'"));
  }

  void otherUnitsKeepWhatWasTyped() {
    NewJobDialog dialog;
    dialog.show();
    auto* units = dialog.findChild<QComboBox*>("newUnits");
    units->setCurrentIndex(1);
    QCOMPARE(field(dialog, "newLength")->text(), QString::fromStdString(shippedNewJob(UnitSystem::Millimetres).length));
    units->setCurrentIndex(0);
    type(dialog, "newLength", "100'");
    units->setCurrentIndex(1);
    QVERIFY2(field(dialog, "newLength")->text().startsWith("30480"), qPrintable(field(dialog, "newLength")->text()));
  }

  void aFreeWallAsksForLess() {
    NewJobDialog dialog;
    dialog.show();
    dialog.findChild<QComboBox*>("newShape")->setCurrentIndex(1);
    QVERIFY(field(dialog, "newWidth")->isHidden());
    QVERIFY(field(dialog, "newEndGirts")->isHidden());
    dialog.findChild<QPushButton*>("newMake")->click();
    QCOMPARE(dialog.job()->walls.size(), std::size_t(1));
  }

  void theDefaultsAreKeptAndABrokenFileIsTold() {
    {
      NewJobDialog dialog;
      dialog.show();
      type(dialog, "newName", "not kept");
      type(dialog, "newColour", "barn red");
      dialog.findChild<QPushButton*>("newKeep")->click();
    }
    {
      NewJobDialog dialog;
      QCOMPARE(field(dialog, "newColour")->text(), QStringLiteral("barn red"));
      QVERIFY(field(dialog, "newName")->text().isEmpty());
      QVERIFY(dialog.findChild<QLabel*>("newTold")->isHidden());
    }
    QVERIFY(writeFile(keptNewJobPath(), "{\"units\": \"yards\"}"));
    NewJobDialog dialog;
    QVERIFY(!dialog.findChild<QLabel*>("newTold")->isHidden());
    QVERIFY(dialog.findChild<QLabel*>("newTold")->text().contains("units"));
    QVERIFY(field(dialog, "newColour")->text().isEmpty());
    QCOMPARE(readFile(keptNewJobPath()), QByteArray("{\"units\": \"yards\"}"));
  }

  void theMenuBeginsAJobThatNoFileHolds() {
    OpenWindow window;
    QTimer::singleShot(0, this, [&] {
      auto* dialog = qobject_cast<NewJobDialog*>(QApplication::activeModalWidget());
      QVERIFY(dialog);
      dialog->findChild<QPushButton*>("newMake")->click();
    });
    window.find<QPushButton>("newFirst")->click();
    QVERIFY(window.session().isOpen());
    QVERIFY(window.session().path().isEmpty());
    QVERIFY(!window.session().history()->isSaved());
    QCOMPARE(window.session().job().walls.size(), std::size_t(4));
    window.session().apply("", window.session().job());
    window.session().saveAs(settings_->filePath("made.json"));  // so that it may be let go
  }

  void aSampleIsOpenedAsACopy() {
    NewJobDialog dialog;
    dialog.show();
    auto* menu = dialog.findChild<QMenu*>("newSamples");
    QVERIFY(menu->actions().size() >= 5);
    menu->actions().at(1)->trigger();
    QCOMPARE(dialog.result(), int(QDialog::Accepted));
    QCOMPARE(QString::fromStdString(dialog.job()->name), menu->actions().at(1)->text());
  }

  void everyFieldHasANameAndCanBeReached() {
    NewJobDialog dialog;
    dialog.show();
    for (QWidget* each : dialog.findChildren<QWidget*>()) {
      const bool input = qobject_cast<QLineEdit*>(each) || qobject_cast<QComboBox*>(each);
      if (!input || each->isHidden()) continue;
      QVERIFY2(!each->accessibleName().isEmpty(), qPrintable(each->objectName()));
      QVERIFY2(each->objectName().startsWith("new"), qPrintable(each->objectName()));
      QVERIFY(each->focusPolicy() & Qt::TabFocus);
    }
  }

 private:
  static QLineEdit* field(const QDialog& dialog, const char* name) {
    return dialog.findChild<QLineEdit*>(QLatin1String(name));
  }
  static void type(const QDialog& dialog, const char* name, const char* words) {
    QLineEdit* edit = field(dialog, name);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QLatin1String(words));
  }

  std::unique_ptr<QTemporaryDir> settings_;
};

WINDOW_TEST(NewJobTest)
#include "new_job_test.moc"
