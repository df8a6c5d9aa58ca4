#include "ui/painting/seen_board.h"

#include <QPainter>

namespace ribwright {

namespace {

void drawAreas(QPainter& painter, const SeenAreas& areas) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(areas.brush);
  for (const QPolygonF& polygon : areas.plain) painter.drawPolygon(polygon);
  for (const QPainterPath& path : areas.withHoles) painter.drawPath(path);
}

void drawLines(QPainter& painter, const SeenLines& lines) {
  painter.setPen(lines.pen);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.drawLines(lines.crisp);
  painter.setRenderHint(QPainter::Antialiasing, true);
  painter.drawLines(lines.slanting);
}

void drawMarks(QPainter& painter, const SeenMarks& marks) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(marks.brush);
  QPolygonF moved = marks.shape;
  for (const QPointF& place : marks.places) {
    for (qsizetype i = 0; i < moved.size(); ++i) moved[i] = marks.shape[i] + place;
    painter.drawPolygon(moved);
  }
}

void drawLabels(QPainter& painter, const SeenLabels& labels) {
  for (const SeenLabels::Plate& plate : labels.plates) painter.fillRect(plate.rect, plate.colour);
  painter.setPen(QPen(labels.ink, 1));
  painter.setBrush(Qt::NoBrush);
  for (const QRectF& frame : labels.frames) painter.drawRoundedRect(frame, frame.height() / 2, frame.height() / 2);
  for (const SeenWords& words : labels.level) painter.drawGlyphRun(words.at, words.run);
  if (labels.upward.isEmpty()) return;
  painter.save();
  painter.rotate(-90);
  for (const SeenWords& words : labels.upward) painter.drawGlyphRun(words.at, words.run);
  painter.restore();
}

}  // namespace

void draw(QPainter& painter, const SeenBoard& seen) {
  drawGround(painter, seen);
  drawLinesAndWords(painter, seen);
}

void drawGround(QPainter& painter, const SeenBoard& seen) {
  painter.setRenderHint(QPainter::Antialiasing, false);
  for (const SeenAreas& areas : seen.areas) drawAreas(painter, areas);
}

void drawLinesAndWords(QPainter& painter, const SeenBoard& seen) {
  for (const SeenLines& lines : seen.lines) drawLines(painter, lines);
  painter.setRenderHint(QPainter::Antialiasing, true);
  for (const SeenMarks& marks : seen.marks) drawMarks(painter, marks);
  drawLabels(painter, seen.labels);
}

}  // namespace ribwright
