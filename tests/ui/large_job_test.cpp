// A job that is planned beside the window: what is done before the last edit is planned goes on from that edit.
#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/survey_file.h"

using namespace ribwright;

class LargeJobTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void readingsOneAfterTheOtherAreAllKept();
  void fieldsOfTheSurveyAreAllKept();
  void aSurveysTableGoesOnFromTheLastEdit();
  void aConfirmationGoesOnFromTheLastEdit();
  void paperIsOfTheLastEdit();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  const Wall& wall() { return session().newest().walls[std::size_t(session().wall())]; }
  // An edit that is still to be planned.
  void rename(const char* name) {
    Job next = session().newest();
    next.name = name;
    QVERIFY(session().apply("rename", next));
    QVERIFY(session().isPlanning());
  }

  std::unique_ptr<OpenWindow> window_;
  QTemporaryDir folder_;
};

void LargeJobTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(samples().filePath("doe-warehouse.json")));
}

void LargeJobTest::readingsOneAfterTheOtherAreAllKept() {
  find<QTabWidget>("tables")->setCurrentWidget(find<QWidget>("survey"));
  auto* cells = find<QTableView>("surveyTable")->model();
  std::vector<QModelIndex> typed;
  for (int row = 0; row < cells->rowCount() && typed.size() < 2; ++row) {
    const QModelIndex cell = cells->index(row, 0);
    if (cell.flags() & Qt::ItemIsEditable) typed.push_back(cell);
  }
  QCOMPARE(typed.size(), std::size_t(2));
  for (const QModelIndex& cell : typed) QVERIFY(cells->setData(cell, "40", Qt::EditRole));
  std::size_t readings = wall().survey.slab.size();
  for (const auto& girt : wall().survey.girts) readings += girt.readings.size();
  QCOMPARE(readings, std::size_t(2));
}

void LargeJobTest::fieldsOfTheSurveyAreAllKept() {
  find<QTabWidget>("tables")->setCurrentWidget(find<QWidget>("survey"));
  for (const char* name : {"surveyChalk", "surveyRising", "surveyFalling"}) {
    auto* field = find<QLineEdit>(name);
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, "50'");
    QTest::keyClick(field, Qt::Key_Return);
  }
  QVERIFY(wall().survey.chalkLine == Length::feet(50));
  QVERIFY(wall().survey.diagonalRising == Length::feet(50));
  QVERIFY(wall().survey.diagonalFalling == Length::feet(50));
}

void LargeJobTest::aSurveysTableGoesOnFromTheLastEdit() {
  const QString path = folder_.filePath("survey.csv");
  const std::string line = "\r\nA," + wall().girts.at(0).id + ",0,";
  QVERIFY(writeFile(path, QByteArray::fromStdString("wall,line,u_in,height_in" + line + "44\r\n")));
  rename("Renamed");
  QVERIFY((*window_)->readSurvey(path));
  QCOMPARE(session().newest().name, std::string("Renamed"));
  QCOMPARE(wall().survey.girts.size(), std::size_t(1));
  QVERIFY(writeSurvey(session(), path).empty());
  QVERIFY(readFile(path).contains(QByteArray::fromStdString(line)));
}

void LargeJobTest::aConfirmationGoesOnFromTheLastEdit() {
  rename("Renamed");
  find<QPushButton>("confirmPatternButton")->click();
  auto* dialog = find<QDialog>("confirmPattern");
  for (const char* name : {"patternSheet", "patternBy", "patternDate"}) {
    auto* field = dialog->findChild<QLineEdit*>(name);
    QVERIFY(field);
    field->setText("2026-01-02");
  }
  dialog->findChild<QPushButton*>("confirmNow")->click();
  QCOMPARE(session().newest().name, std::string("Renamed"));
  QCOMPARE(session().history()->place(), std::size_t(2));
}

void LargeJobTest::paperIsOfTheLastEdit() {
  rename("Renamed");
  QSignalSpy ended(window_->window.get(), &MainWindow::packetEnded);
  QVERIFY((*window_)->startPacket(folder_.path()));
  QVERIFY(session().job() == session().newest());
  find<QAction>("stopPacket")->trigger();
  QTRY_COMPARE(ended.count(), 1);
}

WINDOW_TEST(LargeJobTest)
#include "large_job_test.moc"
