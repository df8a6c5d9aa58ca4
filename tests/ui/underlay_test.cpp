// A picture of the plans laid over a wall in the real window: by clicks and typed lengths, by keys alone, shown again
// the next day, and never a part of the job.
#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QStatusBar>
#include <QTextStream>
#include <cmath>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/points_apart.h"
#include "tests/ui/window_tests.h"
#include "ui/board/hand_picture.h"
#include "ui/board/marked_picture.h"
#include "ui/board/underlay.h"
#include "ui/board/wall_board.h"
#include "ui/panels/lay_plan_dialog.h"
#include "ui/session/kept_laid_plans.h"

using namespace ribwright;

namespace {

constexpr double markRadius = 192;  // mm of wall
const QColor mark(255, 0, 220);     // a colour that no wall has

Length ft(int feet, int inches = 0) { return Length::feet(feet, inches); }

// A sheet scanned askew: turned by 5 degrees, 8 mm of wall to a pixel, the wall's left corner on the concrete at 300,
// 1200. On it a disc at each of the places.
struct Scan {
  QTransform fromFace = QTransform::fromTranslate(300, 1200).rotate(5).scale(1 / 8.0, 1 / 8.0);
  // Over the eave twice, in a door, under the concrete, on a sheet.
  std::vector<FacePoint> places{
      {ft(2), ft(15)}, {ft(50), ft(14)}, {ft(30), ft(8, 6)}, {ft(10), -ft(1, 3)}, {ft(15), ft(11)}};

  QPointF pixel(const FacePoint& place) const {
    const PaperPoint at = onBoard(place);
    return fromFace.map(QPointF(at.x, at.y));
  }
  QImage draw() const {
    QImage picture(2400, 1600, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(Qt::black, 4));
    painter.drawPolygon(fromFace.map(QPolygonF(QRectF(0, -3657.6, 18288, 3657.6))));  // 60 ft by 12 ft
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark);
    for (const FacePoint& place : places) painter.drawEllipse(pixel(place), markRadius / 8, markRadius / 8);
    return picture;
  }
};

class Bench {
 public:
  Bench() {
    path = folder.filePath("workshop.json");
    picture = folder.filePath("scan.png");
    QFile::copy(workshop(), path);
    QFile(path).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    if (!scan.draw().save(picture)) qFatal("the picture cannot be written");
    bytes = readFile(path);
    openJob();
  }
  void openJob() {
    if (!window->openJob(path)) qFatal("the workshop cannot be read");
    board = window.find<WallBoard>("board");
  }
  // The program is started anew.
  void openAgain() {
    window.renew();
    openJob();
  }
  QAction* action(const char* name) { return window.find<QAction>(name); }
  LayPlanDialog* ask() {
    action("layPlan")->trigger();
    auto* dialog = window.find<LayPlanDialog>("layPlanDialog");
    if (!dialog || !QTest::qWaitForWindowExposed(dialog)) qFatal("no dialog comes");
    return dialog;
  }
  void grab(QWidget* widget, const char* name) {
    const QString to = qEnvironmentVariable("RIBWRIGHT_PICTURES");
    QTest::qWait(20);
    if (!to.isEmpty()) widget->grab().save(QDir(to).filePath(QLatin1String(name) + QStringLiteral(".png")));
  }

  QTemporaryDir folder;
  QString path, picture;
  QByteArray bytes;
  Scan scan;
  OpenWindow window;
  WallBoard* board = nullptr;
};

template <class Kind>
Kind* in(QDialog* dialog, const char* name) {
  auto* found = dialog->findChild<Kind*>(QLatin1String(name));
  if (!found) qFatal("the dialog has no %s", name);
  return found;
}

QString faultIn(QDialog* dialog, const char* name) {
  const auto* label = in<QLabel>(dialog, name);
  return label->isVisible() ? label->text() : QString();
}

void type(QDialog* dialog, const char* field, const QString& text) {
  auto* edit = in<QLineEdit>(dialog, field);
  edit->setFocus();
  edit->selectAll();
  QTest::keyClicks(edit, text);
  QTest::keyClick(edit, Qt::Key_Return);
}

void press(QDialog* dialog, const char* button) { QTest::mouseClick(in<QPushButton>(dialog, button), Qt::LeftButton); }

void zoomIn(QWidget* widget, const QPointF& at, int notches) {
  QWheelEvent event(at, widget->mapToGlobal(at), {}, QPoint(0, 120 * notches), Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(widget, &event);
}

// Zooms in where the point is until a click hits it well, as a person does.
void clickOn(MarkedPicture* shown, const QPointF& point) {
  shown->fit();
  zoomIn(shown, shown->onScreen(point), 12);
  QTest::mouseClick(shown, Qt::LeftButton, {}, shown->onScreen(point).toPoint());
}

// Lays the scan by its first two marks.
void lay(Bench& bench) {
  LayPlanDialog* dialog = bench.ask();
  type(dialog, "planFile", bench.picture);
  auto* shown = in<MarkedPicture>(dialog, "planPicture");
  clickOn(shown, bench.scan.pixel(bench.scan.places[0]));
  clickOn(shown, bench.scan.pixel(bench.scan.places[1]));
  type(dialog, "planU1", "2'");
  type(dialog, "planZ1", "180");
  type(dialog, "planU2", "44' + 6'");
  type(dialog, "planZ2", "4267.2 mm");
  shown->fit();
  bench.grab(dialog, "laying");
  press(dialog, "layNow");
}

// The middle of what has the marks' colour near a place on the board; far away where there is none.
QPointF markNear(WallBoard* board, const QPointF& place) {
  const QImage seen = board->grab().toImage();
  const double ratio = seen.devicePixelRatio();
  const double reach = markRadius * board->zoom() + 8;
  QPointF sum;
  int count = 0;
  for (int y = int((place.y() - reach) * ratio); y < (place.y() + reach) * ratio; ++y) {
    for (int x = int((place.x() - reach) * ratio); x < (place.x() + reach) * ratio; ++x) {
      if (!seen.rect().contains(x, y)) continue;
      const QColor colour = seen.pixelColor(x, y);
      if (colour.red() < colour.green() + 60 || colour.blue() < colour.green() + 40) continue;
      sum += QPointF(x + 0.5, y + 0.5) / ratio;
      ++count;
    }
  }
  return count == 0 ? QPointF(-1e6, -1e6) : sum / count;
}

// Of all marks, how far the worst stands from where the wall has its place; pixels.
double worstMark(Bench& bench) {
  double worst = 0;
  for (const FacePoint& place : bench.scan.places) {
    const PaperPoint at = onBoard(place);
    const QPointF wanted = bench.board->onScreen({at.x, at.y});
    worst = std::max(worst, apart(markNear(bench.board, wanted), wanted));
  }
  return worst;
}

// Somewhere on the board.
bool isSeen(Bench& bench) { return worstMark(bench) < 20; }

}  // namespace

class UnderlayTest : public QObject {
  Q_OBJECT

 private slots:
  void marksStandWhereTheWallHasThem() {
    Bench bench;
    QVERIFY(!isSeen(bench));
    lay(bench);
    bench.grab(bench.window.window.get(), "laid");
    QVERIFY2(worstMark(bench) < 2, qPrintable(QString::number(worstMark(bench))));
    // Nearer, and each mark brought into view.
    const double first = bench.board->zoom();
    for (const FacePoint& place : bench.scan.places) {
      bench.board->fit();
      const PaperPoint at = onBoard(place);
      zoomIn(bench.board, bench.board->onScreen({at.x, at.y}), 3);
      const QPointF wanted = bench.board->onScreen({at.x, at.y});
      QVERIFY(apart(markNear(bench.board, wanted), wanted) < 2);
    }
    QVERIFY(bench.board->zoom() > 1.5 * first);
    bench.grab(bench.board, "laid-near");
  }

  void theJobAndItsHistoryAreNotTouched() {
    Bench bench;
    const std::string before = writeJob(bench.window.session().newest());
    lay(bench);
    bench.action("planStrength-75")->trigger();
    QVERIFY(isSeen(bench));
    QVERIFY(!bench.window.session().history()->canUndo());
    QVERIFY(!bench.window->isWindowModified());
    QCOMPARE(writeJob(bench.window.session().newest()), before);
    QCOMPARE(readFile(bench.path), bench.bytes);
  }

  void thePlanLiesThereTheNextDay() {
    Bench bench;
    lay(bench);
    bench.action("planStrength-75")->trigger();
    bench.openAgain();
    QTRY_VERIFY(isSeen(bench));
    QVERIFY(worstMark(bench) < 2);
    QVERIFY(bench.action("planStrength-75")->isChecked());
    QVERIFY(bench.action("showPlan")->isChecked());
    // What was stated stands in the dialog again.
    LayPlanDialog* dialog = bench.ask();
    QCOMPARE(in<QLineEdit>(dialog, "planU2")->text(), QString("50' 0\""));
    QVERIFY(apart(*in<MarkedPicture>(dialog, "planPicture")->cross(1), bench.scan.pixel(bench.scan.places[1])) < 0.5);
    dialog->reject();
  }

  void itIsHiddenAndTakenAway() {
    Bench bench;
    QVERIFY(!bench.action("showPlan")->isEnabled());
    QVERIFY(!bench.action("takePlanAway")->isEnabled());
    lay(bench);
    bench.action("showPlan")->trigger();
    QVERIFY(!isSeen(bench));
    bench.openAgain();
    QVERIFY(!bench.action("showPlan")->isChecked());
    bench.action("showPlan")->trigger();
    QTRY_VERIFY(isSeen(bench));
    bench.action("takePlanAway")->trigger();
    QVERIFY(!isSeen(bench));
    QVERIFY(keptLaidPlans(bench.path).empty());
    QVERIFY(QFileInfo::exists(bench.picture));
  }

  void eachWallHasItsOwn() {
    Bench bench;
    lay(bench);
    bench.window.session().chooseWall("B");
    QVERIFY(!bench.action("showPlan")->isEnabled());
    QVERIFY(!isSeen(bench));
    bench.window.session().chooseWall("A");
    QVERIFY(isSeen(bench));
  }

  // The wall's colour and the picture's are mixed in the share that was asked for.
  void strengthIsAShare() {
    Bench bench;
    lay(bench);
    bench.board->fit();
    const PaperPoint at = onBoard(bench.scan.places[2]);
    const QPoint pixel = bench.board->onScreen({at.x, at.y}).toPoint();
    const auto green = [&] {
      const QImage seen = bench.board->grab().toImage();
      return seen.pixelColor((QPointF(pixel) * seen.devicePixelRatio()).toPoint()).green();
    };
    bench.action("showPlan")->trigger();
    const int bare = green();
    bench.action("showPlan")->trigger();
    for (const int percent : {25, 50, 75}) {
      bench.action(qPrintable(QStringLiteral("planStrength-%1").arg(percent)))->trigger();
      const int mixed = bare * (100 - percent) / 100;  // the mark has no green at all
      QVERIFY2(std::abs(green() - mixed) <= 2, qPrintable(QString("%1, not %2").arg(green()).arg(mixed)));
    }
  }

  void keysAloneSetTheCrosses() {
    Bench bench;
    LayPlanDialog* dialog = bench.ask();
    type(dialog, "planFile", bench.picture);
    auto* shown = in<MarkedPicture>(dialog, "planPicture");
    shown->setFocus();
    QTest::keyClick(shown, Qt::Key_Space);
    const QPointF first = *shown->cross(0);
    QTest::keyClick(shown, Qt::Key_Right);
    QTest::keyClick(shown, Qt::Key_Up, Qt::ShiftModifier);
    QCOMPARE(*shown->cross(0), first + QPointF(1, -10));
    QTest::keyClick(shown, Qt::Key_2);
    QVERIFY(in<QRadioButton>(dialog, "planPoint2")->isChecked());
    QTest::keyClick(shown, Qt::Key_Left);
    QVERIFY(shown->cross(1).has_value());
    QCOMPARE(*shown->cross(0), first + QPointF(1, -10));
    // Never off the picture.
    for (int i = 0; i < 400; ++i) QTest::keyClick(shown, Qt::Key_Left, Qt::ShiftModifier);
    QCOMPARE(shown->cross(1)->x(), 0.0);
    dialog->reject();
  }

  void aCrossIsDragged() {
    Bench bench;
    LayPlanDialog* dialog = bench.ask();
    type(dialog, "planFile", bench.picture);
    auto* shown = in<MarkedPicture>(dialog, "planPicture");
    shown->setCross(0, QPointF(800, 800));
    shown->setCross(1, QPointF(1600, 800));
    const QPoint from = shown->onScreen({1600, 800}).toPoint(), to = from + QPoint(-40, 25);
    const QPointF grip = QPointF(from) - shown->onScreen({1600, 800});
    QTest::mousePress(shown, Qt::LeftButton, {}, from);
    QMouseEvent move(QEvent::MouseMove, to, shown->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(shown, &move);
    QTest::mouseRelease(shown, Qt::LeftButton, {}, to);
    QVERIFY(apart(*shown->cross(1), shown->onShown(QPointF(to) - grip)) < 1e-6);
    QCOMPARE(*shown->cross(0), QPointF(800, 800));
    dialog->reject();
  }

  void whatIsMissingOrWrongIsSaidBesideIt() {
    Bench bench;
    LayPlanDialog* dialog = bench.ask();
    press(dialog, "layNow");
    QVERIFY(faultIn(dialog, "planFault").contains("Choose a picture"));
    type(dialog, "planFile", bench.folder.filePath("nowhere.png"));
    QVERIFY(faultIn(dialog, "planFileFault").contains("nowhere.png"));
    type(dialog, "planFile", bench.path);
    QVERIFY(faultIn(dialog, "planFileFault").contains("is no picture"));
    bench.grab(dialog, "laying-no-picture");
    type(dialog, "planFile", bench.picture);
    QCOMPARE(faultIn(dialog, "planFileFault"), QString());
    press(dialog, "layNow");
    QVERIFY(faultIn(dialog, "planFault").contains("Click point 1"));
    auto* shown = in<MarkedPicture>(dialog, "planPicture");
    clickOn(shown, {700, 700});
    clickOn(shown, {900, 700});
    type(dialog, "planU1", "7 fo");
    QVERIFY(faultIn(dialog, "planU1Fault").contains("7 fo"));
    QCOMPARE(in<QLineEdit>(dialog, "planU1")->text(), QString("7 fo"));
    press(dialog, "layNow");
    QVERIFY(dialog->isVisible());
    bench.grab(dialog, "laying-faults");
    for (const auto* name : {"planU1", "planZ1", "planU2", "planZ2"}) type(dialog, name, "4'");
    QVERIFY(faultIn(dialog, "planFault").contains("one place on the wall"));
    press(dialog, "layNow");
    QVERIFY(dialog->isVisible());
    type(dialog, "planU2", "-4'");
    press(dialog, "layNow");
    QVERIFY(!dialog->isVisible());
    QCOMPARE(keptLaidPlans(bench.path).at("A").places[1].u, -ft(4));
  }

  void aPictureThatIsGoneIsToldOnce() {
    Bench bench;
    lay(bench);
    QVERIFY(QFile::remove(bench.picture));
    bench.openAgain();
    QTRY_VERIFY(bench.window->statusBar()->currentMessage().contains("scan.png"));
    QVERIFY(!isSeen(bench));
    bench.window->statusBar()->clearMessage();
    bench.window.session().chooseWall("B");
    bench.window.session().chooseWall("A");
    QTest::qWait(100);
    QCOMPARE(bench.window->statusBar()->currentMessage(), QString());
    QVERIFY(bench.action("takePlanAway")->isEnabled());
  }

  // Kept as soon as the job has a file.
  void aJobWithoutAFileKeepsItForItsFirst() {
    Bench bench;
    bench.window.session().begin(Job(bench.window.session().job()));
    QVERIFY(!isSeen(bench));
    lay(bench);
    QVERIFY(isSeen(bench));
    const QString named = bench.folder.filePath("named.json");
    QVERIFY(bench.window.session().saveAs(named) == Session::Saved::Yes);
    QCOMPARE(keptLaidPlans(named).size(), std::size_t(1));
    QVERIFY(keptLaidPlans(bench.path).empty());
  }
};

WINDOW_TEST(UnderlayTest)
#include "underlay_test.moc"
