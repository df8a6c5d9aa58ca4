// What of a board is seen in one view, in pixels and ready for a painter: the lines, shapes and glyphs, nothing else.
#pragma once

#include <QBrush>
#include <QGlyphRun>
#include <QLineF>
#include <QList>
#include <QPainterPath>
#include <QPen>
#include <QPolygonF>
#include <QRectF>
#include <vector>

class QPainter;

namespace ribwright {

// Lines that all take one pen; upright and level ones are drawn crisp.
struct SeenLines {
  QPen pen;
  QList<QLineF> crisp, slanting;
};

struct SeenAreas {
  QBrush brush;
  QList<QPolygonF> plain;
  QList<QPainterPath> withHoles;
};

// One shape at many places.
struct SeenMarks {
  QBrush brush;
  QPolygonF shape;
  QList<QPointF> places;
};

struct SeenWords {
  QGlyphRun run;
  QPointF at;  // on the baseline; of words that read upward after turning the board a quarter
};

struct SeenLabels {
  struct Plate {
    QRectF rect;
    QColor colour;
  };
  QColor ink;
  QList<Plate> plates;   // that the words stand on
  QList<QRectF> frames;  // round numbers of columns
  QList<SeenWords> level, upward;
};

struct SeenBoard {
  std::vector<SeenAreas> areas;
  std::vector<SeenLines> lines;
  std::vector<SeenMarks> marks;  // signs, then screws
  SeenLabels labels;
  bool screws = false;  // some are among the marks
};

void draw(QPainter& painter, const SeenBoard& seen);

// The same in two steps, for what lies between: the ground, then lines, signs and words.
void drawGround(QPainter& painter, const SeenBoard& seen);
void drawLinesAndWords(QPainter& painter, const SeenBoard& seen);

}  // namespace ribwright
