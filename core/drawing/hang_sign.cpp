#include "core/drawing/hang_sign.h"

#include "core/drawing/label_block.h"

namespace ribwright {

namespace {

constexpr double shaft = 26, head = 4;
constexpr double signGap = 2.5;     // between a sign and its words
constexpr double betweenSigns = 9;  // from the words of the arrow to the section
constexpr double sheetShown = 10;   // of each sheet in the section
constexpr double lapShown = 4;
constexpr double sheetsApart = 1.5;

struct HangWords {
  LabelBlock hang, lap;
};

double widthOf(const HangWords& words) {
  return shaft + signGap + words.hang.width() + betweenSigns + 2 * sheetShown - lapShown + signGap + words.lap.width();
}

// Seen from above with the outside below, as one stands before the wall: the later sheet is the lower line.
void drawLap(Sketch& sketch, double left, double middle, bool toRight) {
  const double right = left + 2 * sheetShown - lapShown;
  const double inner = middle - sheetsApart / 2, outer = middle + sheetsApart / 2;
  const double start = toRight ? left : right, way = toRight ? 1 : -1;
  sketch.line({start, inner}, {start + way * sheetShown, inner}, openingLine);
  sketch.line({start + way * (sheetShown - lapShown), outer}, {start + way * (2 * sheetShown - lapShown), outer},
              outlineLine);
}

}  // namespace

void drawStartFlag(Sketch& sketch, const WallView& view, double base) {
  const bool left = view.layout->direction.hand == Hand::LeftToRight;
  if (!view.layout->sheeted || !(left ? view.hasLeftCorner() : view.hasRightCorner())) return;
  const double x = left ? 0 : view.x(view.to), outward = left ? -1 : 1;
  sketch.line({x, base + 1}, {x, base + startFlagRoom - 2}, openingLine);
  sketch.fill({{x, base + 2}, {x + outward * 5, base + 4.5}, {x, base + 7}}, Ink::Black);
  const LabelBlock label{{{{view.say("paper.start"), smallText, true}}}, false};
  drawLabel(sketch, label, {x + outward * (6 + label.width() / 2), base + 4.5}, -1);
}

void drawHangSign(Sketch& sketch, const WallView& view, double y) {
  if (!view.layout->sheeted) return;
  const bool toRight = view.layout->direction.hand == Hand::LeftToRight;
  const HangWords words{{{{{view.say(toRight ? "paper.hang.right" : "paper.hang.left"), markText, true}}}, false},
                        {{{{view.say("paper.lap"), smallText, false}}}, false}};
  double x = view.x(half(view.from + view.to)) - widthOf(words) / 2;
  const double middle = y + words.hang.height() / 2;
  const double tip = toRight ? x + shaft : x, tail = toRight ? x : x + shaft;
  sketch.line({tail, middle}, {tip - (toRight ? head : -head), middle}, outlineLine);
  sketch.arrowHead({tip, middle}, toRight ? 1 : -1, 0, head);
  x += shaft + signGap;
  drawLabel(sketch, words.hang, {x + words.hang.width() / 2, middle}, -1);
  x += words.hang.width() + betweenSigns;
  drawLap(sketch, x, middle, toRight);
  x += 2 * sheetShown - lapShown + signGap;
  drawLabel(sketch, words.lap, {x + words.lap.width() / 2, middle}, -1);
}

}  // namespace ribwright
