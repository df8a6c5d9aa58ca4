// The sheets that a job needs, as its sheet order has them, for what is still to be ordered.
#pragma once

#include <vector>

#include "core/layout/wall_layout.h"
#include "core/takeoff/delta_order.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

// Each sheet of the order, then the spares, by line. A sheet from which a piece hangs is hung. `order` made of these
// layouts.
std::vector<SheetNeed> sheetNeeds(const SheetOrder& order, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
