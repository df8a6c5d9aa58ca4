// The menu of what is chosen on the board, and of a place on it.
#include <QtTest>

#include "tests/ui/open_window.h"
#include "tests/ui/tool_bench.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

class PartMenuTest : public QObject {
  Q_OBJECT

 private slots:
  void theMenuAddsWhereItWasAskedFor() {
    ToolBench bench;
    const QPoint at = bench.pixel(ft(17), ft(10));
    for (const char* action : {"girtHere", "columnHere", "jointHere", "bandHere", "baseStepHere"}) {
      const Job before = bench.session().job();
      choose(menuOf(bench, at), action);
      QVERIFY2(bench.session().job() != before, action);
    }
    choose(menuOf(bench, at), "hangRightToLeft");
    QVERIFY(bench.wall().hang == Hang::RightToLeft);
    bench.undoAllAndRedo();
  }

  void theMenuRepeatsMirrorsAndDeletes() {
    ToolBench bench;
    bench.session().chooseWall(std::string("D"));
    const FaceBox w7 = bench.box("W7");
    const QPoint at = bench.pixel(w7.left + ft(1), w7.bottom + ft(1));
    QMenu* menu = menuOf(bench, at);
    QVERIFY(menu);
    QVERIFY(bench.session().chosen() == Part({Part::Kind::Opening, "D", "W7"}));
    bench.grab("menu");
    choose(menu, "copyBeside");
    QCOMPARE(bench.wall().openings.size(), std::size_t(2));
    choose(menuOf(bench, at), "mirrorAcross");
    QCOMPARE(bench.session().chosenWall().letter, std::string("B"));
    QCOMPARE(bench.wall().openings.size(), std::size_t(3));
    bench.undoAllAndRedo();
    bench.session().chooseWall(std::string("A"));
    const FaceBox w1 = bench.box("W1");
    choose(menuOf(bench, bench.pixel(w1.left + ft(1), w1.bottom + ft(1))), "removeParts");
    QVERIFY(!byId(bench.wall().openings, std::string("W1")));
    QVERIFY(!bench.session().chosen());
  }

  void theMenuSplitsAGirtRoundAnOpening() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Girt, "A", "g2"});
    QMenu* menu = menuOf(bench, bench.pixel(ft(16), ft(7, 4)));
    choose(menu, "splitRound:D2");
    QCOMPARE(bench.wall().girts.size(), std::size_t(3));
    QVERIFY(bench.wall().girts[1].to == bench.box("D2").left);
    bench.undoAllAndRedo();
  }
};

WINDOW_TEST(PartMenuTest)
#include "part_menu_test.moc"
