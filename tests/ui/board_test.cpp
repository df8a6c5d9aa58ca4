// The board with the chosen wall, driven as a hand would: zoom, pan, pick, keys; and pictures of it to look at.
#include <QApplication>
#include <QDir>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <cmath>
#include <map>

#include "core/job/job_file.h"
#include "core/plan/plan.h"
#include "tests/ui/window_tests.h"
#include "ui/board/wall_board.h"

using namespace ribwright;

namespace {

struct Sample {
  Job job;
  Plan plan;
};

const Sample& sample(const std::string& name) {
  static std::map<std::string, Sample> read;
  auto [place, fresh] = read.try_emplace(name);
  if (fresh) {
    const auto job = loadJob(std::string(RIBWRIGHT_ROOT "/sample-jobs/") + name + ".json");
    if (!job) qFatal("a sample job cannot be read");
    place->second = {job.value(), plan(job.value())};
  }
  return place->second;
}

std::shared_ptr<const BoardPicture> picture(const std::string& name, std::size_t wall) {
  const Sample& it = sample(name);
  return std::make_shared<BoardPicture>(boardPicture(it.job, it.plan, wall, Words::of("en")));
}

void wheel(QWidget& widget, const QPointF& at, int turned) {
  QWheelEvent event(at, widget.mapToGlobal(at), {}, QPoint(0, turned), Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                    false);
  QApplication::sendEvent(&widget, &event);
}

QPointF middleOf(const WallBoard& board, const BoardPicture& shown, const Part& part) {
  Box place{};
  if (!placeOf(shown, part, place)) qFatal("no such part");
  return board.onScreen({place.middle().x, place.middle().y});
}

const Part& thing(const BoardPicture& shown, Part::Kind kind, int number) {
  for (const BoardThing& each : shown.things) {
    if (each.part.kind == kind && number-- == 0) return each.part;
  }
  qFatal("no such thing");
  return shown.things.front().part;
}

QPalette dark() {
  QPalette palette;
  palette.setColor(QPalette::Base, QColor(30, 32, 36));
  palette.setColor(QPalette::Window, QColor(44, 47, 52));
  palette.setColor(QPalette::Text, QColor(232, 233, 235));
  palette.setColor(QPalette::WindowText, QColor(232, 233, 235));
  palette.setColor(QPalette::Highlight, QColor(92, 160, 242));
  return palette;
}

class ShownBoard {
 public:
  ShownBoard(const std::string& job, std::size_t wall) : shown(picture(job, wall)) {
    board.resize(1200, 560);
    board.setWall(shown);
    board.show();
    board.fit();
  }
  std::shared_ptr<const BoardPicture> shown;
  WallBoard board;
};

}  // namespace

class BoardTest : public QObject {
  Q_OBJECT

 private slots:
  void fittingShowsTheWholeWall();
  void zoomingKeepsThePointUnderTheCursor();
  void draggingMovesTheWallAndPicksNothing();
  void aClickChoosesWhatLiesThere();
  void hoveringTellsWhatLiesThere();
  void tabGoesThroughTheSheetsInHangingOrder();
  void escapeLetsGoAndDoubleClickFits();
  void showingAPartBringsItIntoView();
  void whatIsChosenIsNotToldByColourAlone();
  void theBoardTeachesWhereNothingIsSheeted();
  void pictures();
};

void BoardTest::fittingShowsTheWholeWall() {
  ShownBoard it("gable-workshop", 1);
  const Box& face = it.shown->face;
  QVERIFY(face.width() > 1000);
  for (const auto& [x, y] : {std::pair(face.left, face.top), std::pair(face.right, face.bottom)})
    QVERIFY(QRectF(it.board.rect()).contains(it.board.onScreen({x, y})));
  const double zoom = it.board.zoom();
  it.board.resize(2400, 1120);
  QVERIFY(it.board.zoom() > 1.5 * zoom);
}

void BoardTest::zoomingKeepsThePointUnderTheCursor() {
  ShownBoard it("gable-workshop", 1);
  const QPointF cursor(417, 233);
  for (const int turned : {120, 120, 360, -240, 60}) {
    const QPointF before = it.board.onShown(cursor);
    const double zoom = it.board.zoom();
    wheel(it.board, cursor, turned);
    QVERIFY(std::abs(it.board.zoom() / zoom - std::pow(1.25, turned / 120.0)) < 1e-9);
    const QPointF moved = it.board.onScreen(before) - cursor;
    QVERIFY(std::hypot(moved.x(), moved.y()) < 1e-6);
  }
}

void BoardTest::draggingMovesTheWallAndPicksNothing() {
  ShownBoard it("gable-workshop", 1);
  QSignalSpy chosen(&it.board, &WallBoard::partChosen);
  const QPointF before = it.board.onScreen({0, 0});
  QTest::mousePress(&it.board, Qt::LeftButton, {}, {500, 300});
  QTest::mouseMove(&it.board, {560, 290});
  QTest::mouseRelease(&it.board, Qt::LeftButton, {}, {560, 290});
  QCOMPARE(it.board.onScreen({0, 0}) - before, QPointF(60, -10));
  QCOMPARE(chosen.count(), 0);
  QTest::keyClick(&it.board, Qt::Key_Left);
  QCOMPARE(it.board.onScreen({0, 0}) - before, QPointF(120, -10));
}

void BoardTest::aClickChoosesWhatLiesThere() {
  ShownBoard it("gable-workshop", 1);
  QSignalSpy chosen(&it.board, &WallBoard::partChosen);
  const Part opening = thing(*it.shown, Part::Kind::Opening, 0);
  QTest::mouseClick(&it.board, Qt::LeftButton, {}, middleOf(it.board, *it.shown, opening).toPoint());
  QCOMPARE(chosen.count(), 1);
  QVERIFY(it.board.chosen() == opening);
  QVERIFY(qvariant_cast<std::optional<Part>>(chosen.front().front()) == opening);
  QTest::mouseClick(&it.board, Qt::LeftButton, {}, {it.board.width() - 3, 40});
  QCOMPARE(chosen.count(), 2);
  QVERIFY(!it.board.chosen());
  it.board.setChosen({opening});
  QCOMPARE(chosen.count(), 2);
}

void BoardTest::hoveringTellsWhatLiesThere() {
  ShownBoard it("gable-workshop", 1);
  QSignalSpy hovered(&it.board, &WallBoard::hovered);
  const Part opening = thing(*it.shown, Part::Kind::Opening, 0);
  const QPointF at = middleOf(it.board, *it.shown, opening).toPoint();
  QMouseEvent move(QEvent::MouseMove, at, it.board.mapToGlobal(at), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(&it.board, &move);
  QCOMPARE(hovered.count(), 1);
  QVERIFY(qvariant_cast<std::optional<Part>>(hovered.front().front()) == opening);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&it.board, &leave);
  QCOMPARE(hovered.count(), 2);
  QVERIFY(!qvariant_cast<std::optional<Part>>(hovered.back().front()));
}

void BoardTest::tabGoesThroughTheSheetsInHangingOrder() {
  ShownBoard it("gable-workshop", 1);
  QTest::keyClick(&it.board, Qt::Key_Tab);
  QVERIFY(it.board.chosen() == thing(*it.shown, Part::Kind::Piece, 0));
  QTest::keyClick(&it.board, Qt::Key_Tab);
  QTest::keyClick(&it.board, Qt::Key_Tab);
  QVERIFY(it.board.chosen() == thing(*it.shown, Part::Kind::Piece, 2));
  QTest::keyClick(&it.board, Qt::Key_Backtab, Qt::ShiftModifier);
  QVERIFY(it.board.chosen() == thing(*it.shown, Part::Kind::Piece, 1));
}

void BoardTest::escapeLetsGoAndDoubleClickFits() {
  ShownBoard it("gable-workshop", 1);
  const double whole = it.board.zoom();
  QTest::keyClick(&it.board, Qt::Key_Tab);
  QSignalSpy chosen(&it.board, &WallBoard::partChosen);
  QTest::keyClick(&it.board, Qt::Key_Escape);
  QVERIFY(!it.board.chosen());
  QCOMPARE(chosen.count(), 1);
  QTest::keyClick(&it.board, Qt::Key_Plus);
  QVERIFY(it.board.zoom() > whole);
  QTest::mouseDClick(&it.board, Qt::LeftButton, {}, {600, 300});
  QCOMPARE(it.board.zoom(), whole);
  QTest::keyClick(&it.board, Qt::Key_Minus);
  QVERIFY(it.board.zoom() < whole);
  QTest::keyClick(&it.board, Qt::Key_0);
  QCOMPARE(it.board.zoom(), whole);
}

void BoardTest::showingAPartBringsItIntoView() {
  ShownBoard it("gable-workshop", 1);
  for (int i = 0; i < 8; ++i) it.board.zoomIn();
  const Part last = it.shown->things.back().part;
  for (const Part& part : {thing(*it.shown, Part::Kind::Piece, 0), last, Part{Part::Kind::Screw, "B", "17"}}) {
    it.board.show(part);
    QVERIFY(QRectF(it.board.rect()).contains(middleOf(it.board, *it.shown, part)));
  }
}

void BoardTest::whatIsChosenIsNotToldByColourAlone() {
  ShownBoard it("gable-workshop", 1);
  QPalette grey = it.board.palette();
  grey.setColor(QPalette::Highlight, grey.color(QPalette::Text));
  it.board.setPalette(grey);
  const QImage before = it.board.grab().toImage();
  it.board.setChosen({thing(*it.shown, Part::Kind::Piece, 2)});
  const QImage after = it.board.grab().toImage();
  int changed = 0;
  for (int y = 0; y < after.height(); ++y) {
    for (int x = 0; x < after.width(); ++x) changed += before.pixel(x, y) != after.pixel(x, y) ? 1 : 0;
  }
  QVERIFY2(changed > 1000, "an outline and hatching change many pixels");
}

void BoardTest::theBoardTeachesWhereNothingIsSheeted() {
  Job job = sample("gable-workshop").job;
  job.walls[1].bands.clear();
  const Plan made = plan(job);
  const auto shown = std::make_shared<BoardPicture>(boardPicture(job, made, 1, Words::of("en")));
  QVERIFY(shown->note.find("no profile is chosen") != std::string::npos);
  WallBoard board;
  board.resize(900, 500);
  board.setWall(shown);
  QVERIFY(!board.grab().isNull());
  board.setWall(nullptr);
  QVERIFY(!board.grab().isNull());
}

// Written only where RIBWRIGHT_PICTURES names a folder: whole, half-way and near, light and dark, three screens.
void BoardTest::pictures() {
  const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
  if (folder.isEmpty()) QSKIP("RIBWRIGHT_PICTURES is not set");
  const auto save = [&](WallBoard& board, const QString& name, double ratio) {
    QImage image((QSizeF(board.size()) * ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio);
    board.render(&image);
    QVERIFY(image.save(QDir(folder).filePath("board-" + name + ".png")));
  };
  const std::pair<const char*, std::size_t> walls[] = {
      {"gable-workshop", 1}, {"metric-hall", 0}, {"doe-warehouse", 0}, {"l-shape", 0}, {"lean-to", 0}};
  for (const auto& [name, wall] : walls) {
    for (const bool night : {false, true}) {
      ShownBoard it(name, wall);
      if (night) it.board.setPalette(dark());
      const QString base = QString::fromLatin1(name) + (night ? "-dark" : "");
      save(it.board, base + "-whole", 1);
      for (int i = 0; i < 6; ++i) wheel(it.board, {500, 330}, 120);
      it.board.setChosen({it.shown->things.at(it.shown->things.size() / 4).part});
      save(it.board, base + "-half", 1.5);
      for (int i = 0; i < 6; ++i) wheel(it.board, {500, 330}, 120);
      save(it.board, base + "-near", 2);
    }
  }
}

WINDOW_TEST(BoardTest)
#include "board_test.moc"
