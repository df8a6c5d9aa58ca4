// Where a label stands in a view.
#pragma once

#include <QRectF>

#include "core/drawing/board_picture.h"
#include "ui/painting/board_view.h"

namespace ribwright {

// In pixels. A label within a room slides along it to stay inside `area`; one that stays goes to the area's edge.
// `moved`: it went there.
QRectF placeOf(const BoardLabel& label, const BoardForm& form, const BoardView& view, const QRectF& area,
               double capital, bool& moved);

}  // namespace ribwright
