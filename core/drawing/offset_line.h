// The hole offsets of one row along the sheet's width, running from the starting edge. Unit: mm, y down.
#pragma once

#include <string>

#include "core/drawing/page_flow.h"
#include "core/drawing/stacked_sheet.h"

namespace ribwright {

// As one who stands at the bottom end and looks along the sheet has it before him: the starting edge at his left hand
// or at his right. To scale across the page's width; every offset stands beside its
// hole, or where there are too many for that in a list above.
PageBlock offsetLine(const DrillWall& wall, const StackedSheet& sheet, const OffsetSet& set, const std::string& heading,
                     bool startsAtLeft);

}  // namespace ribwright
