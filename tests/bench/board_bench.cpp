// Painting the board: the long wall of a building 1,000 x 400 ft with 60 openings and all its screws into 1600 x 900
// pixels at three zooms, against a bare QPainter that draws the same lines, shapes and glyphs, put together beforehand.
// And how long it takes to make the picture, once for a plan. Prints ratios; judges nothing.
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <cstdio>

#include "core/drawing/board_picture.h"
#include "tests/bench/screwed_building.h"
#include "ui/painting/board_painter.h"

using namespace ribwright;
using namespace ribwright::bench;

namespace {

constexpr int width = 1600, height = 900, times = 41;
constexpr double capital = 9;  // pixels

// Everything as QPainter takes it: nothing is left to reckon.
struct Bare {
  std::vector<SeenAreas> areas;
  std::vector<SeenLines> lines;
  std::vector<std::pair<QBrush, QList<QPolygonF>>> marks;
  SeenLabels labels;
};

Bare bareOf(const SeenBoard& seen) {
  Bare bare{seen.areas, seen.lines, {}, seen.labels};
  for (const SeenMarks& layer : seen.marks) {
    QList<QPolygonF> shapes;
    for (const QPointF& place : layer.places) shapes.push_back(layer.shape.translated(place));
    bare.marks.push_back({layer.brush, shapes});
  }
  return bare;
}

void drawWords(QPainter& painter, const SeenLabels& labels) {
  for (const SeenLabels::Plate& plate : labels.plates) painter.fillRect(plate.rect, plate.colour);
  painter.setPen(labels.ink);
  painter.setBrush(Qt::NoBrush);
  for (const QRectF& frame : labels.frames) painter.drawRoundedRect(frame, frame.height() / 2, frame.height() / 2);
  for (const SeenWords& words : labels.level) painter.drawGlyphRun(words.at, words.run);
  painter.rotate(-90);
  for (const SeenWords& words : labels.upward) painter.drawGlyphRun(words.at, words.run);
  painter.resetTransform();
}

void drawBare(QPainter& painter, const Bare& bare) {
  painter.setPen(Qt::NoPen);
  for (const SeenAreas& layer : bare.areas) {
    painter.setBrush(layer.brush);
    for (const QPolygonF& shape : layer.plain) painter.drawPolygon(shape);
    for (const QPainterPath& shape : layer.withHoles) painter.drawPath(shape);
  }
  for (const SeenLines& layer : bare.lines) {
    painter.setPen(layer.pen);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.drawLines(layer.crisp);
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.drawLines(layer.slanting);
  }
  painter.setPen(Qt::NoPen);
  painter.setRenderHint(QPainter::Antialiasing, true);
  for (const auto& [brush, shapes] : bare.marks) {
    painter.setBrush(brush);
    for (const QPolygonF& shape : shapes) painter.drawPolygon(shape);
  }
  drawWords(painter, bare.labels);
}

// The wall's first foot-line at the left, its middle in the middle.
BoardView viewOf(const BoardPicture& picture, double zoom) {
  const double from = picture.face.width() * zoom > width ? picture.face.middle().x : 0;
  return {QPointF((from == 0 ? 100 : width / 2.0) - from * zoom, height / 2.0 - picture.face.middle().y * zoom), zoom};
}

// One after the other, so that what else the machine does falls on both alike.
std::pair<double, double> best(const std::function<void()>& ours, const std::function<void()>& theirs) {
  double a = 1e9, b = 1e9;
  for (int i = 0; i < times; ++i) {
    a = std::min(a, seconds(ours, 1));
    b = std::min(b, seconds(theirs, 1));
  }
  return {a, b};
}

struct Count {
  qsizetype areas = 0, lines = 0, marks = 0, words = 0;
};

Count countOf(const Bare& bare) {
  Count count;
  for (const SeenAreas& layer : bare.areas) count.areas += layer.plain.size() + layer.withHoles.size();
  for (const SeenLines& layer : bare.lines) count.lines += layer.crisp.size() + layer.slanting.size();
  for (const auto& layer : bare.marks) count.marks += layer.second.size();
  count.words = bare.labels.level.size() + bare.labels.upward.size();
  return count;
}

void measure(BoardPainter& painter, const BoardPicture& picture, const char* name, double zoom) {
  QImage image(width, height, QImage::Format_ARGB32_Premultiplied);
  const QRectF area(0, 0, width, height);
  const BoardInks inks = boardInks(QApplication::palette());
  const BoardView view = viewOf(picture, zoom);
  const Bare bare = bareOf(painter.gather(picture, view, area, inks));
  const auto [ours, theirs] = best(
      [&] {
        QPainter on(&image);
        on.fillRect(area, inks.ground);
        painter.paint(on, picture, view, area, inks);
      },
      [&] {
        QPainter on(&image);
        on.fillRect(area, inks.ground);
        drawBare(on, bare);
      });
  const Count count = countOf(bare);
  std::printf("  %-22s %5lld areas %6lld lines %6lld marks %4lld words  %7.3f ms, bare %7.3f ms, ratio %.2f\n", name,
              static_cast<long long>(count.areas), static_cast<long long>(count.lines),
              static_cast<long long>(count.marks), static_cast<long long>(count.words), ours * 1e3, theirs * 1e3,
              ours / theirs);
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  const Job job = screwed(Length::feet(1000), 60);
  const Plan planned = plan(job);
  const Words& words = Words::of("en");
  const BoardPicture picture = boardPicture(job, planned, 0, words);
  std::printf("wall of 1,000 ft: %zu sheets, %zu screws; 1600 x 900 pixels\n", planned.walls[0]->layout.pieces.size(),
              planned.walls[0]->holes.holes.size());
  const double made = seconds([&] { (void)boardPicture(job, planned, 0, words); }, 9);
  std::printf("  picture made once for a plan in %.1f ms\n", made * 1e3);
  BoardPainter painter;
  painter.reset(capital);
  measure(painter, picture, "whole wall", 1400 / picture.face.width());
  measure(painter, picture, "100 ft across", width / Length::feet(100).inMillimetres());
  measure(painter, picture, "30 ft across, screws", width / Length::feet(30).inMillimetres());
}
