// Where the plan inset shows each thing of a building: pixels, y down.
#pragma once

#include <QLineF>
#include <QPolygonF>
#include <QString>
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
  std::optional<QPointF> north;  // unit vector toward true north; absent: nothing stands in the plan
};

// `line`: height of a line of text.
PlanPicture planPicture(const Job& job, const Plan& plan, const QSizeF& size, double line);

// The wall nearest to a point, at most `reach` away; -1: none.
int wallAt(const PlanPicture& picture, const QPointF& point, double reach);

}  // namespace ribwright
