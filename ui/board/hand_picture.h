// What the hand does on the board, seen over the wall: what can be taken hold of, what is drawn or moved as it would
// stand, what it snaps to, and how far its neighbours are.
#pragma once

#include <QFont>
#include <QPalette>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "core/editing/face_box.h"
#include "core/editing/neighbours.h"
#include "core/editing/snaps.h"
#include "ui/painting/board_view.h"

class QPainter;

namespace ribwright {

struct HandPicture {
  // A level line (Axis::Z) at a height, or an upright one (Axis::U) at a place along the wall.
  struct Line {
    Axis axis = Axis::U;
    Length at;
    QString name;  // of what is snapped to; else empty
  };
  struct Gap {
    NeighbourGap between;
    QString length;
  };
  std::vector<FacePoint> grips;
  std::vector<FaceBox> boxes;  // without width or height: a point
  std::vector<Line> lines;     // what is drawn or moved
  std::vector<Line> snapped;
  std::vector<Gap> gaps;
  std::optional<FaceBox> frame;  // what lies in it will be chosen
  QString reading;               // beside the pointer: its size, how far it went, or why it cannot be
  bool refused = false;          // the reading says why it cannot be
  FacePoint readingAt;
};

PaperPoint onBoard(const FacePoint& place);
FacePoint onFace(const PaperPoint& place);

// How near a grip must be to be taken: pixels.
inline constexpr double gripReach = 7;

void paintHand(QPainter& painter, const HandPicture& picture, const BoardView& view, const QRectF& area,
               const QFont& font, const QPalette& palette);

}  // namespace ribwright
