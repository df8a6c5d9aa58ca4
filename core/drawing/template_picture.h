// The sheet of a drill template as it lies on the slab: rows with their running ordinates from the bottom end, spaces
// between them, what they are and how many holes they have. To no scale along the sheet, so that every figure stands
// beside its row. Unit: mm, y down.
#pragma once

#include <vector>

#include "core/drawing/page_flow.h"
#include "core/drawing/sheet_lying.h"
#include "core/drawing/stacked_sheet.h"

namespace ribwright {

// Ordinates are rounded once (they stand rounded in the rows), spaces are differences of what is printed. One picture;
// several, each with the rows that follow, where one has no room for all.
std::vector<PageBlock> templatePictures(const DrillWall& wall, const DrillBatch& batch,
                                        const std::vector<OffsetSet>& sets, Lying lying);

}  // namespace ribwright
