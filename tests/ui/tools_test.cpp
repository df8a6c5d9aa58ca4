// The tools of the board in the real window: drawn, dragged, typed, nudged, and taken back.
#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QToolButton>

#include "core/editing/opening_edits.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "ui/board/hand_picture.h"
#include "ui/board/wall_board.h"
#include "ui/panels/plan_inset.h"
#include "ui/panels/wall_view.h"
#include "ui/tools/board_tools.h"

using namespace ribwright;

namespace {

Length in(int whole, int sixteenths = 0) { return Length::inches(whole, 4 * sixteenths); }
Length ft(int feet, int inches = 0) { return Length::feet(feet, inches); }

// Planned beside the window.
QString large() { return samples().filePath("doe-warehouse.json"); }

// A length, or a box, as a failed test says it.
QString words(Length length) { return QString::fromStdString(shownText(length, {})); }
QString words(const FaceBox& box) {
  return QStringList{words(box.left), words(box.right), words(box.bottom), words(box.top)}.join("; ");
}
FaceBox boxOf(Length left, Length right, Length bottom, Length top) { return {left, right, bottom, top}; }

class Bench {
 public:
  explicit Bench(const QString& job = workshop()) {
    if (!window->openJob(job)) qFatal("the job cannot be read");
    window->resize(1500, 1000);
    board = window.find<WallBoard>("board");
    board->fit();
    first = writeJob(session().job());
  }
  Session& session() { return window.session(); }
  BoardTools& tools() { return *static_cast<WallView*>(board->parentWidget()->parentWidget())->tools(); }
  const Wall& wall() { return session().chosenWall(); }
  const Opening& opening(const char* id) { return *byId(wall().openings, std::string(id)); }
  FaceBox box(const char* id) { return openingBox(session().job(), wall(), opening(id)).value(); }

  QPoint pixel(Length u, Length z) { return board->shownAt().at(onBoard({u, z})).toPoint(); }
  void take(const char* tool) { window.find<QAction>(tool)->trigger(); }
  void drag(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers keys = {}) {
    QTest::mousePress(board, Qt::LeftButton, keys, from);
    move(from + (to - from) / 2, keys);
    move(to, keys);
    QTest::mouseRelease(board, Qt::LeftButton, keys, to);
  }
  void move(const QPoint& to, Qt::KeyboardModifiers keys = {}, Qt::MouseButtons held = Qt::LeftButton) {
    QMouseEvent event(QEvent::MouseMove, QPointF(to), board->mapToGlobal(QPointF(to)), Qt::NoButton, held, keys);
    QApplication::sendEvent(board, &event);
  }
  void click(const QPoint& at, Qt::KeyboardModifiers keys = {}) { QTest::mouseClick(board, Qt::LeftButton, keys, at); }
  void type(const char* text) {
    board->setFocus();
    QTest::keyClick(board, text[0]);
    if (text[1]) QTest::keyClicks(window.find<QLineEdit>("typedDrag"), text + 1);
  }
  void enter() { QTest::keyClick(window.find<QLineEdit>("typedDrag"), Qt::Key_Return); }
  // The window as it is, to be looked at where it is asked for.
  void grab(const char* name) {
    const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    if (!folder.isEmpty()) window->grab().save(QDir(folder).filePath(QLatin1String(name) + QStringLiteral(".png")));
  }
  // All that was done can be taken back, to the byte, and done again.
  void undoAllAndRedo() {
    const std::string last = writeJob(session().newest());
    while (session().history()->canUndo()) session().undo();
    QCOMPARE(writeJob(session().newest()), first);
    while (session().history()->canRedo()) session().redo();
    QCOMPARE(writeJob(session().newest()), last);
  }

  OpenWindow window;
  WallBoard* board = nullptr;
  std::string first;
};

QMenu* menuOf(Bench& bench, const QPoint& at) {
  QContextMenuEvent event(QContextMenuEvent::Mouse, at, bench.board->mapToGlobal(at));
  QApplication::sendEvent(bench.board, &event);
  const auto menus = bench.window->findChildren<QMenu*>(QStringLiteral("partMenu"));
  return menus.isEmpty() ? nullptr : menus.back();
}

void choose(QMenu* menu, const char* action) {
  QAction* found = menu->findChild<QAction*>(QLatin1String(action));
  if (!found) qFatal("the menu has no %s", action);
  found->trigger();
  menu->close();
}

}  // namespace

class ToolsTest : public QObject {
  Q_OBJECT

 private slots:
  void aWindowIsDrawnFromCornerToCorner() {
    Bench bench;
    bench.take("tool:window");
    bench.drag(bench.pixel(ft(16), ft(9)), bench.pixel(ft(19), ft(10)));
    QCOMPARE(bench.wall().openings.size(), std::size_t(4));
    const Opening& drawn = bench.wall().openings.back();
    QCOMPARE(drawn.id, std::string("W8"));
    QVERIFY(drawn.kind == Opening::Kind::Window);
    QVERIFY(drawn.place.from == Anchor::From::Column);
    QCOMPARE(words(bench.box("W8")), words(boxOf(ft(16), ft(19), ft(9), ft(10))));
    QVERIFY(bench.session().chosen() == Part({Part::Kind::Opening, "A", "W8"}));
    QCOMPARE(bench.session().history()->undoName(), std::string("Add W8"));
    bench.grab("drawn");
    bench.undoAllAndRedo();
  }

  void aCornerIsClickedAndTheSizeTyped() {
    Bench bench;
    bench.take("tool:window");
    bench.click(bench.pixel(ft(16), ft(9)));
    QVERIFY(bench.tools().isDragging());
    bench.move(bench.pixel(ft(17), ft(10)), {}, Qt::NoButton);
    bench.type("2' 6\" x 1' 10-1/2\"");
    bench.grab("typed");
    bench.enter();
    QCOMPARE(words(bench.box("W8")), words(boxOf(ft(16), ft(18, 6), ft(9), ft(9) + in(22, 8))));
    QVERIFY(!bench.window.find<QLineEdit>("typedDrag")->isVisible());
  }

  void bothCornersAreTypedWithoutAPointer() {
    Bench bench;
    bench.board->setFocus();
    QTest::keyClick(bench.board, Qt::Key_W);
    QVERIFY(bench.tools().tool() == ToolKind::Window);
    bench.type("15' x 8'");
    bench.enter();
    bench.type("3' x 2'");
    bench.enter();
    QCOMPARE(words(bench.box("W8")), words(boxOf(ft(15), ft(18), ft(8), ft(10))));
  }

  void whatCannotBeReadStaysAsItWasTyped() {
    Bench bench;
    bench.take("tool:window");
    bench.click(bench.pixel(ft(15), ft(8)));
    bench.type("3' y 4");
    bench.enter();
    QCOMPARE(bench.window.find<QLineEdit>("typedDrag")->text(), QStringLiteral("3' y 4"));
    QVERIFY(bench.window.find<QLabel>("typedFault")->isVisible());
    QVERIFY(!bench.window.find<QLabel>("typedFault")->text().isEmpty());
    QCOMPARE(bench.wall().openings.size(), std::size_t(3));
    bench.grab("typed-fault");
    QTest::keyClick(bench.window.find<QLineEdit>("typedDrag"), Qt::Key_Escape);
    QVERIFY(!bench.window.find<QLineEdit>("typedDrag")->isVisible());
    QVERIFY(bench.tools().isDragging());
  }

  void everyKindOfOpeningHasATool_data() {
    QTest::addColumn<QString>("tool");
    QTest::addColumn<int>("kind");
    QTest::addColumn<int>("key");
    const auto row = [](const char* tool, Opening::Kind kind, Qt::Key key) {
      QTest::newRow(tool) << QString::fromLatin1(tool) << static_cast<int>(kind) << static_cast<int>(key);
    };
    row("tool:window", Opening::Kind::Window, Qt::Key_W);
    row("tool:walkDoor", Opening::Kind::WalkDoor, Qt::Key_D);
    row("tool:overheadDoor", Opening::Kind::OverheadDoor, Qt::Key_O);
    row("tool:slidingDoor", Opening::Kind::SlidingDoor, Qt::Key_S);
    row("tool:louvre", Opening::Kind::Louvre, Qt::Key_L);
    row("tool:framed", Opening::Kind::Framed, Qt::Key_F);
  }

  void everyKindOfOpeningHasATool() {
    QFETCH(QString, tool);
    QFETCH(int, kind);
    QFETCH(int, key);
    Bench bench;
    bench.board->setFocus();
    QTest::keyClick(bench.board, Qt::Key(key));
    QVERIFY(bench.window.find<QAction>(tool.toUtf8().constData())->isChecked());
    bench.drag(bench.pixel(ft(16), ft(1)), bench.pixel(ft(19), ft(10)));
    const Opening& drawn = bench.wall().openings.back();
    QCOMPARE(static_cast<int>(drawn.kind), kind);
    QCOMPARE(words(drawn.width), words(ft(3)));
    // Doors stand on the concrete.
    const bool door = kind <= static_cast<int>(Opening::Kind::SlidingDoor);
    QCOMPARE(words(drawn.sill), words(door ? Length() : ft(1)));
    QCOMPARE(words(drawn.sill + drawn.height), words(ft(10)));
    bench.undoAllAndRedo();
  }

  void aDoorsTypedHeightIsFromTheConcrete() {
    Bench bench;
    bench.take("tool:walkDoor");
    bench.click(bench.pixel(ft(16), ft(6)));
    bench.type("3' x 7'");
    bench.enter();
    const Opening& door = bench.wall().openings.back();
    QCOMPARE(words(door.width), words(ft(3)));
    QCOMPARE(words(door.height), words(ft(7)));
    QCOMPARE(words(door.sill), words(Length()));
  }

  void whatIsMovedAlongTheWallKeepsItsHeight() {
    Bench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    bench.drag(from, from + QPoint(60, 3));
    QVERIFY(bench.box("W1").left != before.left);
    QCOMPARE(words(bench.box("W1").bottom), words(before.bottom));
  }

  void lettersTakeToolsAlsoWhenAWallsTileHasTheKeyboard() {
    Bench bench;
    bench.window.tiles()[1]->setFocus();
    QTest::keyClick(bench.window.tiles()[1], Qt::Key_O);
    QVERIFY(bench.tools().tool() == ToolKind::OverheadDoor);
  }

  void pointsOfAFreeWallsTopArePutAndDragged() {
    Bench bench(samples().filePath("l-shape.json"));
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
    Bench bench(samples().filePath("lean-to.json"));
    const FacePoint step = bench.wall().base.steps.at(1);
    bench.drag(bench.pixel(step.u, step.z), bench.pixel(step.u + ft(2), step.z));
    QVERIFY(bench.wall().base.steps.at(1).u > step.u);
    bench.undoAllAndRedo();
  }

  void limitsOfBandsAndJointsAreDraggedAndTakenOut() {
    Bench bench;
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

  void theMenuAddsWhereItWasAskedFor() {
    Bench bench;
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

  void whatASnapFindsIsNamed() {
    Bench bench;
    bench.take("tool:window");
    QTest::mousePress(bench.board, Qt::LeftButton, {}, bench.pixel(ft(16), ft(9)));
    bench.move(bench.pixel(ft(18), ft(10)));
    bench.move(bench.pixel(ft(20), ft(10)));
    const HandPicture* hand = static_cast<BoardHand&>(bench.tools()).picture();
    QStringList names;
    for (const auto& line : hand->snapped) names << line.name;
    QVERIFY2(names.contains(QStringLiteral("column 2")), qPrintable(names.join(';')));
    QVERIFY(!hand->gaps.empty());
    QVERIFY(hand->reading.contains(QStringLiteral("4' 0\"")));
    QTest::mouseRelease(bench.board, Qt::LeftButton, {}, bench.pixel(ft(20), ft(10)));
    QCOMPARE(words(bench.box("W8").right), words(ft(20)));
  }

  void escGoesOneStepBackEachTime() {
    Bench bench;
    bench.take("tool:window");
    QTest::mousePress(bench.board, Qt::LeftButton, {}, bench.pixel(ft(15), ft(8)));
    bench.move(bench.pixel(ft(17), ft(9)));
    bench.move(bench.pixel(ft(18), ft(10)));
    QVERIFY(bench.session().isPreview());
    QTest::keyClick(bench.board, Qt::Key_Escape);
    QVERIFY(!bench.session().isPreview());
    QVERIFY(bench.tools().tool() == ToolKind::Window);
    QTest::mouseRelease(bench.board, Qt::LeftButton, {}, bench.pixel(ft(18), ft(10)));
    QCOMPARE(bench.wall().openings.size(), std::size_t(3));
    QTest::keyClick(bench.board, Qt::Key_Escape);
    QVERIFY(bench.tools().tool() == ToolKind::Choose);
    QVERIFY(!bench.session().history()->canUndo());
  }

  void anOpeningIsDraggedAndSnapsToAColumn() {
    Bench bench;
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
    Bench bench;
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
    Bench bench;
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
    Bench bench;
    const FaceBox before = bench.box("W1");
    const QPoint from = bench.pixel(before.left + ft(2), before.bottom + ft(1, 6));
    bench.drag(from, from + QPoint(1, 1));
    QVERIFY(!bench.session().history()->canUndo());
    QVERIFY(bench.session().chosen() == Part({Part::Kind::Opening, "A", "W1"}));
  }

  void girtsAreAddedByAClickAndByTyping() {
    Bench bench;
    bench.take("tool:girt");
    bench.click(bench.pixel(ft(10), ft(9)));
    QCOMPARE(bench.wall().girts.size(), std::size_t(3));
    QCOMPARE(words(bench.wall().girts.back().height), words(ft(9)));
    QVERIFY(bench.tools().tool() == ToolKind::Girt);
    bench.type("10' 2\"");
    bench.enter();
    QCOMPARE(bench.wall().girts.size(), std::size_t(4));
    QCOMPARE(words(bench.wall().girts.back().height), words(ft(10, 2)));
    bench.undoAllAndRedo();
  }

  void aChosenGirtIsDraggedAndItsEndStopped() {
    Bench bench;
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
    Bench bench;
    bench.session().choose(Part{Part::Kind::Column, "A", "2"});
    bench.drag(bench.pixel(ft(20), ft(11)), bench.pixel(ft(17), ft(11)));
    QCOMPARE(words(bench.wall().columns.bays[0]), words(ft(17)));
    QCOMPARE(words(bench.wall().columns.bays[1]), words(ft(23)));
    bench.undoAllAndRedo();
  }

  void aColumnThatIsNotChosenDoesNotMoveByAccident() {
    Bench bench;
    const auto view = bench.board->shownAt();
    bench.drag(bench.pixel(ft(20), ft(11)), bench.pixel(ft(18), ft(11)));
    QVERIFY(!bench.session().history()->canUndo());
    QVERIFY(bench.board->shownAt() != view);
  }

  void theFirstModuleLineIsDragged() {
    Bench bench;
    const auto grips = gripsOf(bench.session().job(), bench.session().plan(), 0, {Part{Part::Kind::Face, "A", ""}});
    const auto line =
        std::find_if(grips.begin(), grips.end(), [](const Grip& grip) { return grip.kind == Grip::Kind::ModuleLine; });
    QVERIFY(line != grips.end());
    bench.drag(bench.pixel(line->at.u, line->at.z), bench.pixel(line->at.u, line->at.z) + QPoint(30, 0));
    QVERIFY(bench.wall().start.rule == Start::Rule::Typed);
    bench.undoAllAndRedo();
  }

  void jointsBandsAndStepsArePut() {
    Bench bench;
    bench.take("tool:joint");
    bench.click(bench.pixel(ft(29), ft(11)));
    QCOMPARE(words(bench.wall().expansionJoints.at(0)), words(ft(29)));
    bench.take("tool:bandLimit");
    bench.type("4'");
    bench.enter();
    QCOMPARE(bench.wall().bands.size(), std::size_t(2));
    QVERIFY(bench.wall().bands[1].from == ft(4));
    bench.take("tool:baseStep");
    bench.type("50' x 6\"");
    bench.enter();
    QCOMPARE(bench.wall().base.steps.size(), std::size_t(1));
    bench.grab("joint-band-step");
    bench.undoAllAndRedo();
  }

  void holesAreDrawn() {
    Bench bench;
    bench.take("tool:roundHole");
    bench.drag(bench.pixel(ft(16), ft(9)), bench.pixel(ft(17), ft(10)));
    bench.take("tool:rectangularHole");
    bench.drag(bench.pixel(ft(18), ft(9)), bench.pixel(ft(19), ft(10)));
    QCOMPARE(bench.wall().penetrations.size(), std::size_t(2));
    QVERIFY(bench.wall().penetrations[0].shape == Penetration::Shape::Round);
    QVERIFY(bench.wall().penetrations[1].shape == Penetration::Shape::Rectangular);
    bench.undoAllAndRedo();
  }

  void severalAreChosenByAFrameAndMovedTogether() {
    Bench bench;
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
    Bench bench;
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
    Bench bench;
    bench.session().choose(Part{Part::Kind::Opening, "A", "W1"});
    const FaceBox before = bench.box("W1");
    const QPoint edge = bench.pixel(before.right, scaled(before.bottom + before.top, 1, 2)) + QPoint(5, 0);
    bench.drag(edge, edge + QPoint(40, 0));
    QVERIFY(bench.box("W1").right > before.right);
    QVERIFY(bench.session().chosen() == (Part{Part::Kind::Opening, "A", "W1"}));
  }

  void aToolDoesNotChooseWhatWasClickedBeforeIt() {
    Bench bench;
    const FaceBox before = bench.box("W1");
    bench.click(bench.pixel(before.left + ft(1), before.bottom + ft(1)));
    QVERIFY(bench.session().chosen() == (Part{Part::Kind::Opening, "A", "W1"}));
    bench.session().choose(std::nullopt);
    bench.take("tool:column");
    bench.click(bench.pixel(before.right + ft(5), ft(9)));
    QCOMPARE(bench.session().history()->size(), std::size_t(2));
    QVERIFY(!bench.session().chosen());
  }

  void theMenuRepeatsMirrorsAndDeletes() {
    Bench bench;
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
    Bench bench;
    bench.session().choose(Part{Part::Kind::Girt, "A", "g2"});
    QMenu* menu = menuOf(bench, bench.pixel(ft(16), ft(7, 4)));
    choose(menu, "splitRound:D2");
    QCOMPARE(bench.wall().girts.size(), std::size_t(3));
    QVERIFY(bench.wall().girts[1].to == bench.box("D2").left);
    bench.undoAllAndRedo();
  }

  void whatCannotBeIsToldAndNothingIsChanged() {
    Bench bench;
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
    Bench bench;
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
    Bench bench(large());
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

  void girtsAreTypedIntoALargeJobOneAfterTheOther() {
    Bench bench(large());
    const std::size_t before = bench.wall().girts.size();
    bench.take("tool:girt");
    bench.move(bench.pixel(ft(60), ft(10)), {}, Qt::NoButton);
    for (const char* height : {"9' 1\"", "10' 1\""}) {
      bench.type(height);
      bench.enter();
    }
    QCOMPARE(bench.session().newest().walls[0].girts.size(), before + 2);
  }

  void theSightPointOfALargeJobIsDraggedInOneGo() {
    Bench bench(large());
    auto* plan = bench.window.find<PlanInset>("plan");
    const std::size_t before = bench.session().history()->size();
    const QPoint eye = plan->picture().sights.at(0).at.toPoint(), away(eye.x(), plan->height() - eye.y());
    QTest::mousePress(plan, Qt::LeftButton, {}, eye);
    QMouseEvent moved(QEvent::MouseMove, QPointF(away), plan->mapToGlobal(QPointF(away)), Qt::NoButton,
                      Qt::LeftButton, {});
    QApplication::sendEvent(plan, &moved);
    QTest::mouseRelease(plan, Qt::LeftButton, {}, away);
    QCOMPARE(bench.session().history()->size(), before + 1);
  }

  void theStatusLineSaysWhatAnEditDidToTheOrder() {
    Bench bench;
    bench.take("tool:window");
    bench.click(bench.pixel(ft(16), ft(9)));
    bench.type("3' x 1'");
    bench.enter();
    auto* changes = bench.window->findChild<QWidget*>(QStringLiteral("statusBatches"));
    const QString words = changes->property("text").toString() + changes->toolTip() + changes->accessibleName();
    QVERIFY2(words.contains(QStringLiteral("Add W8: ")), qPrintable(words));
    bench.session().undo();
    const QString undone = changes->toolTip() + changes->accessibleName();
    QVERIFY2(undone.contains(QStringLiteral("Undone, Add W8: ")), qPrintable(undone));
    QVERIFY(bench.window.find<QAction>("redo")->text().contains(QStringLiteral("Add W8")));
    bench.session().redo();
    const QString again = changes->toolTip() + changes->accessibleName();
    QVERIFY2(again.contains(QStringLiteral("Done again, Add W8: ")), qPrintable(again));
  }
};

QTEST_MAIN(ToolsTest)
#include "tools_test.moc"
