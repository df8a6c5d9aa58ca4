// Where a picture lies on a wall's face, from two points of which both places are known: turned, scaled and shifted,
// never sheared, stretched or mirrored.
#pragma once

#include <QPointF>
#include <QTransform>
#include <array>

#include "core/units/outcome.h"

namespace ribwright {

struct PointPair {
  QPointF onPicture;  // pixels of the picture, y down
  QPointF onFace;     // mm: x = u, y = -z
  bool operator==(const PointPair&) const = default;
};

// From pixels of the picture to mm on the face; both points exactly, as far as a double goes.
// Faults: two points that are one, on the picture or on the wall.
Outcome<QTransform> similarityOf(const std::array<PointPair, 2>& points);

// mm on the face to a pixel of the picture.
double scaleOf(const QTransform& similarity);
// Degrees by which the picture is turned clockwise to lie on the face, over -180 to 180.
double turnOf(const QTransform& similarity);

}  // namespace ribwright
