// The pages of drill batches: a template for each that is cleared, reasons and remedies for those that are held.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/drill_wall.h"
#include "core/drawing/sheet_lying.h"

namespace ribwright {

// Of a cleared batch: FACE UP or FACE DOWN, the sheet as it then lies with every row's ordinate, the offsets of each
// row, the stack from its top to its bottom, what to do in which order, and who signed for it.
std::vector<BarePage> templatePages(const DrillWall& wall, const DrillBatch& batch, Lying lying);

// Of the wall's held batches, one after the other: which sheets, why, and what to do about it. No ordinates. Empty:
// none is held.
std::vector<BarePage> heldPages(const DrillWall& wall);

}  // namespace ribwright
