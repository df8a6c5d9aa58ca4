// Where names stand on the board when a part of the wall is seen.
#include <QtTest>

#include "core/drawing/board_forms.h"
#include "tests/ui/window_tests.h"
#include "ui/painting/label_places.h"

using namespace ribwright;

namespace {

constexpr double capital = 10;
const QRectF area(30, 30, 970, 570);

// Columns 20 ft apart: the number of the one at u = 0 may take up to half way to its neighbour.
BoardLabel columnNumber() {
  BoardLabel label;
  label.stand = BoardLabel::Stand::Under;
  label.room = {-kNoLimit, 0, 3048, kNoLimit};
  label.forms = {boardForm({{{"1", true}}})};
  label.stays = true;
  return label;
}

}  // namespace

class LabelPlacesTest : public QObject {
  Q_OBJECT

 private slots:
  void aColumnsNumberStaysUnderItsColumn();
  void aColumnsNumberComesUpToTheViewsEdge();
  void aSheetsMarkSlidesAlongItsSheet();
};

void LabelPlacesTest::aColumnsNumberStaysUnderItsColumn() {
  const BoardLabel label = columnNumber();
  bool moved = false;
  for (const double x : {500.0, 30.0, -100.0, -2000.0}) {
    const QRectF place = placeOf(label, label.forms[0], {QPointF(x, 300), 1}, area, capital, moved);
    QCOMPARE(place.center().x(), x);
  }
}

void LabelPlacesTest::aColumnsNumberComesUpToTheViewsEdge() {
  const BoardLabel label = columnNumber();
  bool moved = false;
  QCOMPARE(placeOf(label, label.forms[0], {QPointF(500, 300), 1}, area, capital, moved).top(), 300.0);
  QVERIFY(!moved);
  QCOMPARE(placeOf(label, label.forms[0], {QPointF(500, 2000), 1}, area, capital, moved).bottom(), area.bottom());
  QVERIFY(moved);
}

void LabelPlacesTest::aSheetsMarkSlidesAlongItsSheet() {
  BoardLabel label;
  label.room = {0, -4000, 900, 0};
  label.at = label.room.middle();
  label.forms = markForms("B7", "13' 2\"");
  bool moved = false;
  // The sheet's lower 600 mm are seen: its mark stands there, and nowhere outside the sheet.
  const QRectF place = placeOf(label, label.forms[0], {QPointF(100, 630), 1}, area, capital, moved);
  QVERIFY(area.contains(place));
  QVERIFY(QRectF(100, -3370, 900, 4000).contains(place));
}

WINDOW_TEST(LabelPlacesTest)
#include "label_places_test.moc"
