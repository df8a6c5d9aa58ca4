// The tools of the board in the real window: what they draw and put, by hand and by typing, and what is told of it.
#include <QtTest>

#include "tests/ui/open_window.h"
#include "tests/ui/tool_bench.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

class ToolsTest : public QObject {
  Q_OBJECT

 private slots:
  void aWindowIsDrawnFromCornerToCorner() {
    ToolBench bench;
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
    ToolBench bench;
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
    ToolBench bench;
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
    ToolBench bench;
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
    ToolBench bench;
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
    ToolBench bench;
    bench.take("tool:walkDoor");
    bench.click(bench.pixel(ft(16), ft(6)));
    bench.type("3' x 7'");
    bench.enter();
    const Opening& door = bench.wall().openings.back();
    QCOMPARE(words(door.width), words(ft(3)));
    QCOMPARE(words(door.height), words(ft(7)));
    QCOMPARE(words(door.sill), words(Length()));
  }

  void lettersTakeToolsAlsoWhenAWallsTileHasTheKeyboard() {
    ToolBench bench;
    bench.window.tiles()[1]->setFocus();
    QTest::keyClick(bench.window.tiles()[1], Qt::Key_O);
    QVERIFY(bench.tools().tool() == ToolKind::OverheadDoor);
  }

  void whatASnapFindsIsNamed() {
    ToolBench bench;
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
    ToolBench bench;
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

  void girtsAreAddedByAClickAndByTyping() {
    ToolBench bench;
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

  void jointsBandsAndStepsArePut() {
    ToolBench bench;
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
    ToolBench bench;
    bench.take("tool:roundHole");
    bench.drag(bench.pixel(ft(16), ft(9)), bench.pixel(ft(17), ft(10)));
    bench.take("tool:rectangularHole");
    bench.drag(bench.pixel(ft(18), ft(9)), bench.pixel(ft(19), ft(10)));
    QCOMPARE(bench.wall().penetrations.size(), std::size_t(2));
    QVERIFY(bench.wall().penetrations[0].shape == Penetration::Shape::Round);
    QVERIFY(bench.wall().penetrations[1].shape == Penetration::Shape::Rectangular);
    bench.undoAllAndRedo();
  }

  void aToolDoesNotChooseWhatWasClickedBeforeIt() {
    ToolBench bench;
    const FaceBox before = bench.box("W1");
    bench.click(bench.pixel(before.left + ft(1), before.bottom + ft(1)));
    QVERIFY(bench.session().chosen() == (Part{Part::Kind::Opening, "A", "W1"}));
    bench.session().choose(std::nullopt);
    bench.take("tool:column");
    bench.click(bench.pixel(before.right + ft(5), ft(9)));
    QCOMPARE(bench.session().history()->size(), std::size_t(2));
    QVERIFY(!bench.session().chosen());
  }

  void girtsAreTypedIntoALargeJobOneAfterTheOther() {
    ToolBench bench(large());
    const std::size_t before = bench.wall().girts.size();
    bench.take("tool:girt");
    bench.move(bench.pixel(ft(60), ft(10)), {}, Qt::NoButton);
    for (const char* height : {"9' 1\"", "10' 1\""}) {
      bench.type(height);
      bench.enter();
    }
    QCOMPARE(bench.session().newest().walls[0].girts.size(), before + 2);
  }

  void theStatusLineSaysWhatAnEditDidToTheOrder() {
    ToolBench bench;
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

WINDOW_TEST(ToolsTest)
#include "tools_test.moc"
