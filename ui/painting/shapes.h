// From shapes of core to those of the painter.
#pragma once

#include <QList>
#include <QPainterPath>
#include <QPolygonF>
#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

QPolygonF polygonOf(const std::vector<PaperPoint>& points);

// With the even-odd rule.
QPainterPath pathOf(const std::vector<std::vector<PaperPoint>>& rings);

// In widths of the pen, as Qt counts them; empty for a solid line. `unit`: a millimetre of paper in the units of the
// width.
QList<qreal> dashesOf(Dash dash, double width, double unit);

}  // namespace ribwright
