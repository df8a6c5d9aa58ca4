// Where a label stands in a view.
#pragma once

#include <QRectF>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_view.h"

namespace ribwright {

// In pixels. A label within a room slides along it to stay inside `area`. One that stays goes to the area's edge, and
// along its own line alone: a column's number up or down, a girt's name to the side. `moved`: it went there.
QRectF placeOf(const BoardLabel& label, const BoardForm& form, const BoardView& view, const QRectF& area,
               double capital, bool& moved);

}  // namespace ribwright
