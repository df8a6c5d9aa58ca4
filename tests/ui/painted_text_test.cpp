// The ink that the painter leaves lies in the box that core reckoned with.
#include <QImage>
#include <QPainter>
#include <QtTest>

#include "core/drawing/text_extent.h"
#include "tests/ui/window_tests.h"
#include "ui/painting/page_painter.h"

using namespace ribwright;

namespace {

constexpr double paintedPerMillimetre = 20;

// Ink of a drawing in millimetres.
Box inkOf(const Drawing& drawing) {
  QImage image(80 * int(paintedPerMillimetre), 80 * int(paintedPerMillimetre), QImage::Format_Grayscale8);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(paintedPerMillimetre, paintedPerMillimetre);
  paintDrawing(painter, drawing, 1 / paintedPerMillimetre);
  painter.end();
  Box ink{1e9, 1e9, -1e9, -1e9};
  for (int y = 0; y < image.height(); ++y) {
    const uchar* line = image.constScanLine(y);
    for (int x = 0; x < image.width(); ++x) {
      if (line[x] > 127) continue;
      ink = united(ink, {x / paintedPerMillimetre, y / paintedPerMillimetre, (x + 1) / paintedPerMillimetre,
                         (y + 1) / paintedPerMillimetre});
    }
  }
  return ink;
}

Drawing drawingOf(Item item) {
  Drawing drawing;
  drawing.items.push_back(std::move(item));
  return drawing;
}

}  // namespace

class PaintedTextTest : public QObject {
  Q_OBJECT

 private slots:
  void textLiesInItsBox();
  void capitalsHaveTheirHeight();
  void lettersStandWhereCorePutsThem();
  void linesHaveTheirWidth();
};

void PaintedTextTest::textLiesInItsBox() {
  const QStringList samples = {"A7.2  14' 8-1/2\"", "WAVE AWAY To", "ffi flow", "height g()[]{}|", "½ × 3′ 4″ ≤"};
  for (const QString& words : samples) {
    for (const bool bold : {false, true}) {
      for (const double turn : {0.0, 90.0, 30.0}) {
        for (const TextAnchor anchor : {TextAnchor::Start, TextAnchor::Middle, TextAnchor::End}) {
          const Text text{{40, 40}, 2.5, anchor, turn, bold, words.toStdString(), -1};
          const Box ink = inkOf(drawingOf(text)), box = boxOf(text);
          QVERIFY2(inside(ink, box.grown(0.1)), qPrintable(words));
          // A level text reaches almost from end to end: its first and last letters keep little room beside them.
          if (turn == 0) QVERIFY2(ink.width() > box.width() - 1.2, qPrintable(words));
          if (turn == 90) QVERIFY2(ink.height() > box.height() - 1.2, qPrintable(words));
        }
      }
    }
  }
}

void PaintedTextTest::capitalsHaveTheirHeight() {
  for (const double height : {2.5, 3.5, 10.0}) {
    const Box ink = inkOf(drawingOf(Text{{10, 40}, height, TextAnchor::Start, 0, false, "H", -1}));
    QVERIFY(qAbs(ink.height() - height) < 0.11);
    QVERIFY(qAbs(ink.bottom - 40) < 0.06);
  }
}

// Kerned, the A would slide under the V; joined, f and i would be one letter.
void PaintedTextTest::lettersStandWhereCorePutsThem() {
  for (const char* words : {"AV", "fi", "To", "11"}) {
    const std::string second(1, words[1]);
    const double first = widthOf(std::string(1, words[0]), 10, false);
    const Box both = inkOf(drawingOf(Text{{10, 40}, 10, TextAnchor::Start, 0, false, words, -1}));
    const Box alone = inkOf(drawingOf(Text{{10 + first, 40}, 10, TextAnchor::Start, 0, false, second, -1}));
    QVERIFY2(qAbs(both.right - alone.right) < 0.06, words);
  }
}

void PaintedTextTest::linesHaveTheirWidth() {
  const Box ink = inkOf(drawingOf(Stroke{{{10, 20}, {60, 20}}, false, {0.7}, Dash::Solid, -1}));
  QVERIFY(qAbs(ink.height() - 0.7) < 0.06);
  QVERIFY(qAbs(ink.width() - 50) < 0.06);
  const Box pixels =
      inkOf(drawingOf(Stroke{{{10, 20}, {60, 20}}, false, {4, StrokeWidth::In::PixelsOnScreen}, Dash::Solid, -1}));
  QVERIFY(qAbs(pixels.height() - 4 / paintedPerMillimetre) < 0.06);
}

WINDOW_TEST(PaintedTextTest)
#include "painted_text_test.moc"
