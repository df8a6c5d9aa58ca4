// Widths in the perimeter strip, and places in the plan beside it.
#include <QtTest>
#include <numeric>

#include "core/job/job_file.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/plan_picture.h"
#include "ui/panels/strip_widths.h"

using namespace ribwright;

namespace {

int sum(const std::vector<int>& all) { return std::accumulate(all.begin(), all.end(), 0); }

Job sample(const char* name) { return loadJob(std::string(RIBWRIGHT_ROOT "/sample-jobs/") + name + ".json").value(); }

}  // namespace

class StripTest : public QObject {
  Q_OBJECT

 private slots:
  void wallsAreToScaleWhereThereIsRoom();
  void aShortWallKeepsItsLeastWidth();
  void withoutRoomAllAreAtTheirLeast();
  void whatIsFilledIsFilledToThePixel();
  void thePlanIsToOneScaleWithFrontBelow();
  void sightPointsFarAwayStandAtTheEdge();
  void trueNorthTurnsClockwise();
};

void StripTest::wallsAreToScaleWhereThereIsRoom() {
  QCOMPARE(stripWidths({60, 40, 60, 40}, {10, 10, 10, 10}, 400), std::vector<int>({120, 80, 120, 80}));
}

void StripTest::aShortWallKeepsItsLeastWidth() {
  QCOMPARE(stripWidths({100, 1, 100}, {50, 50, 50}, 450), std::vector<int>({200, 50, 200}));
  // One that is held presses another one below its own least.
  QCOMPARE(stripWidths({100, 10, 30}, {20, 60, 100}, 400), std::vector<int>({240, 60, 100}));
}

void StripTest::withoutRoomAllAreAtTheirLeast() {
  QCOMPARE(stripWidths({60, 40}, {100, 120}, 50), std::vector<int>({100, 120}));
  QCOMPARE(stripWidths({}, {}, 50), std::vector<int>());
  QCOMPARE(stripWidths({0, 0}, {30, 30}, 500), std::vector<int>({30, 30}));  // walls that could not be laid out
}

void StripTest::whatIsFilledIsFilledToThePixel() {
  for (int room = 300; room < 900; room += 7) {
    const auto widths = stripWidths({13.1, 7.7, 29.3, 3.3, 11}, {20, 20, 20, 20, 20}, room);
    QVERIFY2(qAbs(sum(widths) - room) <= 1, qPrintable(QString::number(room)));
    for (const int width : widths) QVERIFY(width >= 20);
  }
}

void StripTest::thePlanIsToOneScaleWithFrontBelow() {
  const Job job = sample("gable-workshop");
  const PlanPicture picture = planPicture(job, plan(job), {300, 160}, 15);
  QCOMPARE(picture.walls.size(), std::size_t(4));
  const auto& walls = picture.walls;
  // 60 ft by 40 ft, wall A in front.
  QVERIFY(qAbs(walls[0].line.length() / walls[1].line.length() - 1.5) < 1e-9);
  QVERIFY(walls[0].line.y1() > walls[2].line.y1());
  QVERIFY(walls[0].line.x1() < walls[0].line.x2());
  QVERIFY(walls[1].line.x1() > walls[3].line.x1());
  // Letters stand outside.
  QVERIFY(walls[0].letter.y() > walls[0].line.y1());
  QVERIFY(walls[2].letter.y() < walls[2].line.y1());
  QVERIFY(walls[1].letter.x() > walls[1].line.x1());
  QVERIFY(walls[3].letter.x() < walls[3].line.x1());
  for (const auto& wall : walls) QVERIFY(QRectF(0, 0, 300, 160).contains(wall.letter));
}

void StripTest::sightPointsFarAwayStandAtTheEdge() {
  Job job = sample("gable-workshop");
  job.site.sightPoints = {{"road", {Length::feet(30), Length::feet(-4000)}, 1},
                          {"yard", {Length::feet(30), Length::feet(20)}, 1}};
  const PlanPicture picture = planPicture(job, plan(job), {300, 160}, 15);
  QCOMPARE(picture.sights.size(), std::size_t(2));
  QVERIFY(picture.sights[0].beyond);
  QVERIFY(QRectF(0, 0, 300, 160).contains(picture.sights[0].at));
  QVERIFY(picture.sights[0].at.y() > picture.walls[0].line.y1());
  QVERIFY(qAbs(picture.sights[0].at.x() - 150) < 2);
  QVERIFY(!picture.sights[1].beyond);
}

void StripTest::trueNorthTurnsClockwise() {
  Job job = sample("gable-workshop");
  job.site.trueNorth = Angle::degrees(0);
  QVERIFY(QLineF(*planPicture(job, plan(job), {300, 160}, 15).north, QPointF(0, -1)).length() < 1e-9);
  job.site.trueNorth = Angle::degrees(90);  // toward the plan's +x
  QVERIFY(QLineF(*planPicture(job, plan(job), {300, 160}, 15).north, QPointF(1, 0)).length() < 1e-9);
}

WINDOWLESS_TEST(StripTest)
#include "strip_test.moc"
