// What stands on a wall is moved in the real window: taken by its grips, dragged, typed, nudged; the eye in the plan
// too.
#include <QtTest>

#include "tests/ui/open_window.h"
#include "tests/ui/tool_bench.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/plan_inset.h"

using namespace ribwright;

class DraggedPartsTest : public QObject {
  Q_OBJECT

 private slots:
  void whatIsMovedAlongTheWallKeepsItsHeight() {
    ToolBench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    bench.drag(from, from + QPoint(60, 3));
    QVERIFY(bench.box("W1").left != before.left);
    QCOMPARE(words(bench.box("W1").bottom), words(before.bottom));
  }

  void pointsOfAFreeWallsTopArePutAndDragged() {
    ToolBench bench(samples().filePath("l-shape.json"));
    bench.session().chooseWall(std::string("S"));
    const auto before = bench.wall().top;
    QVERIFY(before.size() >= 2);
    const auto middle = [](Length a, Length b) { return a + half(b - a); };
    const FacePoint put{middle(before[0].u, before[1].u), middle(before[0].z, before[1].z) + ft(1)};
    bench.take("tool:topPoint");
    bench.click(bench.pixel(put.u, put.z));
    QCOMPARE(bench.wall().top.size(), before.size() + 1);
    bench.take("tool:choose");
    const FacePoint point = bench.wall().top[1];
    bench.drag(bench.pixel(point.u, point.z), bench.pixel(point.u, point.z - ft(2)));
    QVERIFY(bench.wall().top[1].z < point.z);
    bench.undoAllAndRedo();
  }

  void stepsOfTheConcreteAreDragged() {
    ToolBench bench(samples().filePath("lean-to.json"));
    const FacePoint step = bench.wall().base.steps.at(1);
    bench.drag(bench.pixel(step.u, step.z), bench.pixel(step.u + ft(2), step.z));
    QVERIFY(bench.wall().base.steps.at(1).u > step.u);
    bench.undoAllAndRedo();
  }

  void limitsOfBandsAndJointsAreDraggedAndTakenOut() {
    ToolBench bench;
    bench.take("tool:bandLimit");
    bench.type("6'");
    bench.enter();
    bench.take("tool:joint");
    bench.type("29'");
    bench.enter();
    bench.take("tool:choose");
    QVERIFY(!bench.session().chosen());  // what was typed chose nothing
    bench.drag(bench.pixel(ft(30), ft(6)), bench.pixel(ft(30), ft(5)));
    QVERIFY2(*bench.wall().bands.at(1).from < ft(6), qPrintable(words(*bench.wall().bands[1].from)));
    const Length joint = bench.wall().expansionJoints.at(0);
    bench.drag(bench.pixel(joint, {}), bench.pixel(joint + ft(2), {}));
    QVERIFY(bench.wall().expansionJoints.at(0) > joint);
    choose(menuOf(bench, bench.pixel(bench.wall().expansionJoints[0], {})), "removeGrip");
    QVERIFY(bench.wall().expansionJoints.empty());
    choose(menuOf(bench, bench.pixel(ft(30), *bench.wall().bands[1].from)), "removeGrip");
    QCOMPARE(bench.wall().bands.size(), std::size_t(1));
    bench.undoAllAndRedo();
  }

  void anOpeningIsDraggedAndSnapsToAColumn() {
    ToolBench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    const Length column3 = ft(40);
    // Two pixels short of the column.
    const QPoint to = from + QPoint(bench.pixel(column3, {}).x() - bench.pixel(before.left, {}).x() + 2, 0);
    bench.drag(from, to);
    QVERIFY(bench.box("W1").left == column3);
    QVERIFY(bench.box("W1").bottom == before.bottom);
    QVERIFY(bench.opening("W1").place.from == Anchor::From::Column);
    QCOMPARE(bench.opening("W1").place.column, 3);
    QVERIFY(bench.session().chosen() == Part({Part::Kind::Opening, "A", "W1"}));
    bench.undoAllAndRedo();
  }

  void ctrlSuspendsSnapping() {
    ToolBench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    const QPoint to = from + QPoint(bench.pixel(ft(40), {}).x() - bench.pixel(before.left, {}).x() + 3, 0);
    bench.drag(from, to, Qt::ControlModifier);
    const Length left = bench.box("W1").left;
    QVERIFY(left != ft(40));
    QVERIFY(left > ft(40) && left < ft(41));
    QCOMPARE(left.nanometres() % tapeMark(UnitSystem::FeetInches).nanometres(), 0);
  }

  void anEdgeIsDraggedAndADistanceTyped() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Opening, "A", "W1"});
    const FaceBox before = bench.box("W1");
    const Length middle = before.bottom + half(before.top - before.bottom);
    QTest::mousePress(bench.board, Qt::LeftButton, {}, bench.pixel(before.right, middle));
    bench.move(bench.pixel(before.right + ft(1), middle));
    bench.type("1' 3\"");
    bench.grab("edge-typed");
    bench.enter();
    QVERIFY(bench.box("W1").right == before.right + ft(1, 3));
    QVERIFY(bench.box("W1").left == before.left);
    bench.undoAllAndRedo();
  }

  void aDragThatEndsWhereItBeganIsNoEdit() {
    ToolBench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    bench.drag(from, from + QPoint(1, 1));
    QVERIFY(!bench.session().history()->canUndo());
    QVERIFY(bench.session().chosen() == Part({Part::Kind::Opening, "A", "W1"}));
  }

  void aChosenGirtIsDraggedAndItsEndStopped() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Girt, "A", "g2"});
    const Grip end =
        gripsOf(bench.session().job(), bench.session().plan(), 0, {Part{Part::Kind::Girt, "A", "g2"}}).back();
    QVERIFY(end.kind == Grip::Kind::GirtEnd);
    bench.drag(bench.pixel(end.at.u, end.at.z), bench.pixel(ft(40), end.at.z));
    QVERIFY(bench.wall().girts[1].to == ft(40));
    const Length before = bench.wall().girts[1].height;
    bench.drag(bench.pixel(ft(16), end.at.z), bench.pixel(ft(16), end.at.z + ft(1)));
    QVERIFY(bench.wall().girts[1].height > before);
    bench.undoAllAndRedo();
  }

  void aColumnThatIsChosenIsDragged() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Column, "A", "2"});
    bench.drag(bench.pixel(ft(20), ft(11)), bench.pixel(ft(17), ft(11)));
    QCOMPARE(words(bench.wall().columns.bays[0]), words(ft(17)));
    QCOMPARE(words(bench.wall().columns.bays[1]), words(ft(23)));
    bench.undoAllAndRedo();
  }

  void aColumnThatIsNotChosenDoesNotMoveByAccident() {
    ToolBench bench;
    const auto view = bench.board->shownAt();
    bench.drag(bench.pixel(ft(20), ft(11)), bench.pixel(ft(18), ft(11)));
    QVERIFY(!bench.session().history()->canUndo());
    QVERIFY(bench.board->shownAt() != view);
  }

  void theFirstModuleLineIsDragged() {
    ToolBench bench;
    const auto grips = gripsOf(bench.session().job(), bench.session().plan(), 0, {Part{Part::Kind::Face, "A", ""}});
    const auto line =
        std::find_if(grips.begin(), grips.end(), [](const Grip& grip) { return grip.kind == Grip::Kind::ModuleLine; });
    QVERIFY(line != grips.end());
    bench.drag(bench.pixel(line->at.u, line->at.z), bench.pixel(line->at.u, line->at.z) + QPoint(30, 0));
    QVERIFY(bench.wall().start.rule == Start::Rule::Typed);
    bench.undoAllAndRedo();
  }

  void severalAreChosenByAFrameAndMovedTogether() {
    ToolBench bench;
    bench.session().chooseWall(std::string("C"));
    bench.drag(bench.pixel(ft(5), ft(8)), bench.pixel(ft(35), ft(1)), Qt::ShiftModifier);
    QCOMPARE(bench.session().chosenParts().size(), std::size_t(2));
    const FaceBox w4 = bench.box("W4"), w5 = bench.box("W5");
    const QPoint from = bench.pixel(w4.left + ft(2), w4.bottom + ft(1, 6));
    bench.drag(from, from + QPoint(bench.pixel(ft(2), {}).x() - bench.pixel({}, {}).x(), 0));
    QVERIFY(bench.box("W4").left > w4.left + ft(1, 6));
    QCOMPARE(words(bench.box("W5").left - w5.left), words(bench.box("W4").left - w4.left));
    QVERIFY(bench.box("W4").bottom == w4.bottom);
    QCOMPARE(bench.session().chosenParts().size(), std::size_t(2));
    bench.undoAllAndRedo();
  }

  void arrowsNudgeAndAreOneStep() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Opening, "A", "W1"});
    const FaceBox before = bench.box("W1");
    bench.board->setFocus();
    for (int i = 0; i < 3; ++i) QTest::keyClick(bench.board, Qt::Key_Right);
    QTest::keyClick(bench.board, Qt::Key_Up, Qt::ShiftModifier);
    QTest::keyClick(bench.board, Qt::Key_Right, Qt::AltModifier);
    QVERIFY(bench.box("W1").left == before.left + in(3, 1));
    QVERIFY(bench.box("W1").bottom == before.bottom + ft(1));
    QCOMPARE(bench.session().history()->size(), std::size_t(2));
    bench.undoAllAndRedo();
  }

  void whatLiesUnderAGripIsNotChosenByIt() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Opening, "A", "W1"});
    const FaceBox before = bench.box("W1");
    const QPoint edge = bench.pixel(before.right, scaled(before.bottom + before.top, 1, 2)) + QPoint(5, 0);
    bench.drag(edge, edge + QPoint(40, 0));
    QVERIFY(bench.box("W1").right > before.right);
    QVERIFY(bench.session().chosen() == (Part{Part::Kind::Opening, "A", "W1"}));
  }

  void whatCannotBeIsToldAndNothingIsChanged() {
    ToolBench bench;
    bench.session().choose(Part{Part::Kind::Opening, "A", "W1"});
    const FaceBox before = bench.box("W1");
    const Length middle = before.bottom + half(before.top - before.bottom);
    QSignalSpy told(&bench.tools(), &BoardTools::told);
    bench.drag(bench.pixel(before.right, middle), bench.pixel(before.left - ft(2), middle));
    QVERIFY(bench.box("W1") == before);
    QCOMPARE(told.count(), 1);
    QVERIFY(!bench.session().isPreview());
    QVERIFY(!bench.session().history()->canUndo());
  }

  void theSightPointIsDraggedAndTheLapsTurn() {
    ToolBench bench;
    auto* plan = bench.window.find<PlanInset>("plan");
    const auto hand = [&](std::size_t wall) { return bench.session().seenPlan().walls[wall]->layout.direction.hand; };
    const Hand before = hand(0);
    const QPoint eye = plan->picture().sights.at(0).at.toPoint(), across(plan->width() - eye.x(), eye.y());
    QTest::mousePress(plan, Qt::LeftButton, {}, eye);
    QMouseEvent moved(QEvent::MouseMove, QPointF(across), plan->mapToGlobal(QPointF(across)), Qt::NoButton,
                      Qt::LeftButton, {});
    QApplication::sendEvent(plan, &moved);
    QVERIFY(bench.session().isPreview());
    QVERIFY(hand(0) != before);
    QVERIFY(!bench.session().history()->canUndo());
    QTest::mouseRelease(plan, Qt::LeftButton, {}, across);
    QVERIFY(!bench.session().isPreview());
    QVERIFY(hand(0) != before);
    QCOMPARE(bench.session().history()->size(), std::size_t(2));
    // Far away it only goes round: as far from the middle as it was, to the foot.
    const PlanPoint was{ft(150), -ft(80)}, is = bench.session().job().site.sightPoints[0].at;
    const auto away = [](const PlanPoint& p) { return std::hypot(p.x.inMetres() - 9.144, p.y.inMetres() - 6.096); };
    QVERIFY(std::abs(away(was) - away(is)) < 0.35);
    bench.undoAllAndRedo();
  }

  void aDragOfALargeJobDoesNotTakeBackAnEditMadeMeanwhile() {
    ToolBench bench(large());
    bench.take("tool:window");
    bench.click(bench.pixel(ft(60), ft(10)));
    Job next = bench.session().newest();
    next.name = "Renamed";
    QVERIFY(bench.session().apply("rename", next));
    QVERIFY(bench.session().isPlanning());
    bench.move(bench.pixel(ft(64), ft(13)), {}, Qt::NoButton);
    bench.type("3' x 3'");
    bench.enter();
    QCOMPARE(bench.session().newest().name, std::string("Renamed"));
    bench.session().settle();
    QVERIFY(bench.session().job() == bench.session().newest());
  }

  void theSightPointOfALargeJobIsDraggedInOneGo() {
    ToolBench bench(large());
    auto* plan = bench.window.find<PlanInset>("plan");
    const std::size_t before = bench.session().history()->size();
    const QPoint eye = plan->picture().sights.at(0).at.toPoint(), away(eye.x(), plan->height() - eye.y());
    QTest::mousePress(plan, Qt::LeftButton, {}, eye);
    QMouseEvent moved(QEvent::MouseMove, QPointF(away), plan->mapToGlobal(QPointF(away)), Qt::NoButton, Qt::LeftButton,
                      {});
    QApplication::sendEvent(plan, &moved);
    QTest::mouseRelease(plan, Qt::LeftButton, {}, away);
    QCOMPARE(bench.session().history()->size(), before + 1);
  }
};

WINDOW_TEST(DraggedPartsTest)
#include "dragged_parts_test.moc"
