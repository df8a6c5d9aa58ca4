// Two points of a picture, known on the wall, lay the whole picture: turned and scaled, never sheared.
#include <QTest>
#include <cmath>
#include <random>

#include "tests/ui/points_apart.h"
#include "tests/ui/window_tests.h"
#include "ui/board/similarity.h"

using namespace ribwright;

namespace {

constexpr double tenth = 0.1;  // mm

QTransform laid(const PointPair& a, const PointPair& b) {
  const auto similarity = similarityOf({a, b});
  if (!similarity) qFatal("%s", similarity.faults().front().message.c_str());
  return similarity.value();
}

QString faultOf(const PointPair& a, const PointPair& b) {
  const auto similarity = similarityOf({a, b});
  return similarity ? QString() : QString::fromStdString(oneLine(similarity.faults().front()));
}

}  // namespace

class SimilarityTest : public QObject {
  Q_OBJECT

 private slots:
  // A sheet of a 40 ft wall scanned at 1/8" to the foot and 200 dots to the inch: 25 dots to the foot.
  void anUprightScanIsScaledAndShifted() {
    const QTransform toFace = laid({{500, 900}, {0, 0}}, {{1500, 900}, {12192, 0}});
    QVERIFY(apart(toFace.map(QPointF(500, 900)), {0, 0}) < 1e-9);
    QVERIFY(apart(toFace.map(QPointF(1500, 900)), {12192, 0}) < 1e-9);
    // 4 ft in from the left corner and 10 ft up: 100 dots over, 250 dots higher.
    QVERIFY(apart(toFace.map(QPointF(600, 650)), {1219.2, -3048}) < tenth);
    QCOMPARE(scaleOf(toFace), 12.192);
    QCOMPARE(turnOf(toFace), 0.0);
  }

  void aSheetUpsideDownIsTurnedRound() {
    // The wall's left corner is at the picture's right, its top below.
    const QTransform toFace = laid({{1500, 300}, {0, 0}}, {{500, 300}, {10000, 0}});
    QVERIFY(apart(toFace.map(QPointF(1400, 500)), {1000, -2000}) < tenth);
    QCOMPARE(std::abs(turnOf(toFace)), 180.0);
  }

  void aSheetOnItsSideIsTurnedAQuarter() {
    // Along the wall goes down the picture: what is up on the wall is at the right.
    const QTransform toFace = laid({{200, 100}, {0, 0}}, {{200, 1100}, {5000, 0}});
    QVERIFY(apart(toFace.map(QPointF(600, 300)), {1000, -2000}) < tenth);
    QCOMPARE(turnOf(toFace), -90.0);
  }

  // Photographed a little askew: 3-4-5 gives a turn that is known without a table.
  void aCrookedPhotographIsSetStraight() {
    const QTransform toFace = laid({{1000, 1000}, {0, 0}}, {{1800, 1600}, {10000, 0}});
    QVERIFY(apart(toFace.map(QPointF(1000 + 600, 1000 - 800)), {0, -10000}) < tenth);
    QVERIFY(std::abs(turnOf(toFace) + 36.8698976) < 1e-6);
    QCOMPARE(scaleOf(toFace), 10.0);
  }

  // A picture of any turn and scale, looked at through two of its points, gives back every other.
  void twoPointsGiveBackEveryOther() {
    std::mt19937 random(20);
    std::uniform_real_distribution<double> pixel(0, 6000), turn(-180, 180), scale(0.2, 40), shift(-50000, 50000);
    for (int i = 0; i < 500; ++i) {
      const double size = scale(random);
      const QTransform known =
          QTransform::fromTranslate(shift(random), shift(random)).rotate(turn(random)).scale(size, size);
      const QPointF a(pixel(random), pixel(random)), b(pixel(random), pixel(random)), c(pixel(random), pixel(random));
      if (apart(a, b) < 100) continue;
      const QTransform found = laid({a, known.map(a)}, {b, known.map(b)});
      QVERIFY(apart(found.map(a), known.map(a)) < 1e-6);
      QVERIFY(apart(found.map(b), known.map(b)) < 1e-6);
      QVERIFY(apart(found.map(c), known.map(c)) < tenth);
    }
  }

  void pointsThatAreOneAreAFault() {
    QVERIFY(faultOf({{10, 20}, {0, 0}}, {{10, 20}, {1000, 0}}).contains("set them far apart"));
    QVERIFY(faultOf({{10, 20}, {500, -500}}, {{90, 20}, {500, -500}}).contains("type where each of them lies"));
    QCOMPARE(faultOf({{10, 20}, {0, 0}}, {{90, 20}, {0, -1}}), QString());
  }
};

WINDOWLESS_TEST(SimilarityTest)
#include "similarity_test.moc"
