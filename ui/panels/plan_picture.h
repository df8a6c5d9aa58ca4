// Where the plan inset shows each thing of a building: pixels, y down.
#pragma once

#include <QLineF>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QTransform>
#include <optional>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace ribwright {

struct PlanPicture {
  struct WallLine {
    QLineF line;         // from its left to its right corner seen from outside
    QPointF letter;      // middle of its letter
    bool placed = true;  // false: the job does not say where it stands; its line is one of a row under the plan
    bool sheeted = false;
    Hand hand = Hand::LeftToRight;
  };
  struct Sight {
    QPointF at;
    QString name;
    bool beyond = false;  // it stands farther away than the plan reaches
  };
  QPolygonF outline;
  std::vector<WallLine> walls;  // in the job's order
  std::vector<Sight> sights;
  QTransform toPixels;           // from metres in the plan, y down
  QRectF frame;                  // sight points beyond it stand on its edge
  std::optional<QPointF> north;  // unit vector toward true north; absent: nothing stands in the plan
};

// `line`: height of a line of text.
PlanPicture planPicture(const Job& job, const Plan& plan, const QSizeF& size, double line);

// The place in the plan of a sight point that is dragged to a pixel, to whole feet or tenths of a metre. On the edge of
// the frame and outside it stays as far away as `from` and only goes round, else it stands where the pixel is.
PlanPoint sightAt(const PlanPicture& picture, const QPointF& pixel, const PlanPoint& from, UnitSystem units);
// The sight point within reach of a pixel; -1: none.
int sightNear(const PlanPicture& picture, const QPointF& pixel, double reach);

// The wall nearest to a point, at most `reach` away; -1: none.
int wallAt(const PlanPicture& picture, const QPointF& point, double reach);

}  // namespace ribwright
