// What a person stated to lay a picture of the plans over a wall: two points of it, and where on the wall they are.
#pragma once

#include <QPointF>
#include <QString>
#include <array>

#include "core/job/building.h"
#include "ui/board/similarity.h"

namespace ribwright {

struct LaidPlan {
  QString file;                     // of the picture
  std::array<QPointF, 2> points;    // pixels of the picture
  std::array<FacePoint, 2> places;  // of the points, on the wall's face
  int percent = 50;                 // strength
  bool shown = true;
  bool operator==(const LaidPlan&) const = default;
};

// As similarityOf().
Outcome<QTransform> toFaceOf(const LaidPlan& laid);

}  // namespace ribwright
