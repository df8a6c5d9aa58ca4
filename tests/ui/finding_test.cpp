// Findings in the window: sorted, copied, put aside with a reason and taken back, and mended by a button.
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/finding_list.h"
#include "ui/panels/remedy_bar.h"

using namespace ribwright;

class FindingTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void linesAreSortedByGradeAndWall();
  void chosenLinesAreCopied();
  void aFindingIsPutAsideAndTakenBack();
  void nothingIsPutAsideWithoutAReason();
  void aRemedyIsShownWhilePointedAtAndDoneWhenPressed();
  void aRemedyIsReachedByKeyboard();
  void numbersAreConfirmedFromTheirFinding();

 private:
  Session& session() { return window_->session(); }
  FindingList* list() { return window_->find<FindingList>("findings"); }
  // The job with a start that has nothing to go by, and that finding chosen.
  void chooseStartNotFollowed();
  void chooseFinding(const std::string& id) {
    const auto& findings = session().plan().findings;
    for (std::size_t i = 0; i < findings.size(); ++i) {
      if (findings[i].id == id) return list()->setCurrentItem(list()->itemOf(int(i)));
    }
    QFAIL("the job has no such finding");
  }
  bool isFound(const std::string& id) {
    const auto& findings = session().plan().findings;
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& each) { return each.id == id; });
  }
  QPushButton* remedy(int number) {
    return window_->find<RemedyBar>("remedies")->findChild<QPushButton*>(QStringLiteral("remedy%1").arg(number));
  }

  std::unique_ptr<OpenWindow> window_;
};

void FindingTest::init() {
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
}

void FindingTest::chooseStartNotFollowed() {
  Job job = session().job();
  for (Wall& wall : job.walls) {
    if (wall.cladding == Cladding::Sheeted) {
      wall.start = {};
      wall.start.rule = Start::Rule::SeamAtJamb;
      wall.start.opening = "gone";
      break;
    }
  }
  session().apply("Start at a jamb", job);
  session().settle();
  chooseFinding("start-not-followed");
}

void FindingTest::linesAreSortedByGradeAndWall() {
  const auto& findings = session().plan().findings;
  QVERIFY(findings.size() > 3);
  const auto at = [&](int row) { return findings[std::size_t(list()->at(list()->topLevelItem(row)))]; };
  list()->header()->setSortIndicator(0, Qt::DescendingOrder);
  for (int row = 1; row < list()->topLevelItemCount(); ++row) QVERIFY(at(row - 1).grade >= at(row).grade);
  list()->header()->setSortIndicator(1, Qt::AscendingOrder);
  for (int row = 1; row < list()->topLevelItemCount(); ++row) QVERIFY(at(row - 1).wall <= at(row).wall);
  // A line that is chosen in another order leads to its own place.
  list()->setCurrentItem(list()->topLevelItem(list()->topLevelItemCount() - 1));
  const int line = list()->at(list()->currentItem());
  QVERIFY(session().chosen() == session().findingParts()[std::size_t(line)]);
  list()->header()->setSortIndicator(-1, Qt::AscendingOrder);
  for (int row = 0; row < list()->topLevelItemCount(); ++row) QCOMPARE(list()->at(list()->topLevelItem(row)), row);
}

void FindingTest::chosenLinesAreCopied() {
  list()->setFocus();
  list()->setCurrentItem(list()->topLevelItem(0));
  list()->topLevelItem(1)->setSelected(true);
  QTest::keyClick(list(), Qt::Key_C, Qt::ControlModifier);
  const QStringList lines = QGuiApplication::clipboard()->text().trimmed().split('\n');
  QCOMPARE(lines.size(), 3);
  QCOMPARE(lines[0], QString("Grade\tWall\tWhere\tWhy"));
  QVERIFY(lines[1].contains(list()->topLevelItem(0)->text(3)));
}

void FindingTest::aFindingIsPutAsideAndTakenBack() {
  chooseStartNotFollowed();
  QVERIFY(!window_->find<QPushButton>("showSilenced")->isVisibleTo(window_->window.get()));
  auto* reason = window_->find<QLineEdit>("silenceReason");
  reason->setFocus();
  QTest::keyClicks(reason, "as the owner wants it");
  QTest::mouseClick(window_->find<QPushButton>("silence"), Qt::LeftButton);
  session().settle();
  QVERIFY(!isFound("start-not-followed"));
  QVERIFY(session().job().silenced.at(0).reason == "as the owner wants it");
  auto* shown = window_->find<QPushButton>("showSilenced");
  QVERIFY(shown->isVisibleTo(window_->window.get()));
  QVERIFY(shown->text().contains("1"));
  shown->click();
  auto* silenced = window_->find<FindingList>("silencedFindings");
  QCOMPARE(silenced->topLevelItemCount(), 1);
  QCOMPARE(silenced->topLevelItem(0)->text(2), QString("as the owner wants it"));
  QVERIFY(!silenced->topLevelItem(0)->text(3).isEmpty());
  silenced->setCurrentItem(silenced->topLevelItem(0));
  window_->find<QPushButton>("takeBack")->click();
  session().settle();
  QVERIFY(isFound("start-not-followed"));
  QVERIFY(list()->isVisibleTo(window_->window.get()));
  session().undo();
  session().settle();
  QVERIFY(!isFound("start-not-followed"));
}

void FindingTest::nothingIsPutAsideWithoutAReason() {
  chooseStartNotFollowed();
  const std::size_t steps = session().history()->size();
  window_->find<QPushButton>("silence")->click();
  QCOMPARE(session().history()->size(), steps);
  QVERIFY(window_->find<QLabel>("findingTold")->text().startsWith("▲"));
  QVERIFY(isFound("start-not-followed"));
}

void FindingTest::aRemedyIsShownWhilePointedAtAndDoneWhenPressed() {
  chooseStartNotFollowed();
  QTRY_VERIFY(remedy(1));
  const Job before = session().job();
  QPushButton* flush = remedy(1);
  QVERIFY(flush->accessibleName().startsWith("Start flush"));
  QEnterEvent enter({1, 1}, {1, 1}, {1, 1});
  QCoreApplication::sendEvent(flush, &enter);
  QTRY_VERIFY(session().isPreview());
  QVERIFY(session().newest() == before);
  QEvent leave(QEvent::Leave);
  QCoreApplication::sendEvent(flush, &leave);
  QVERIFY(!session().isPreview());
  const std::size_t steps = session().history()->size();
  flush->click();
  session().settle();
  QVERIFY(!isFound("start-not-followed"));
  QCOMPARE(session().history()->size(), steps + 1);
  QVERIFY(session().history()->undoName() == "Start flush");
  session().undo();
  session().settle();
  QVERIFY(session().job() == before);
}

void FindingTest::aRemedyIsReachedByKeyboard() {
  chooseStartNotFollowed();
  QTRY_VERIFY(remedy(1));
  remedy(1)->setFocus();
  QTRY_VERIFY(session().isPreview());
  list()->setFocus();
  QVERIFY(!session().isPreview());
  QVERIFY(remedy(1)->focusPolicy() & Qt::TabFocus);
}

void FindingTest::numbersAreConfirmedFromTheirFinding() {
  Job job = session().job();
  for (ScrewPattern& pattern : job.patterns) pattern.confirmation.reset();
  session().apply("Withdraw", job);
  session().settle();
  chooseFinding("pattern-not-confirmed");
  QTRY_VERIFY(window_->find<QPushButton>("remedyConfirm"));
  window_->find<QPushButton>("remedyConfirm")->click();
  QTRY_VERIFY(window_->window->findChild<QDialog*>());
}

WINDOW_TEST(FindingTest)
#include "finding_test.moc"
