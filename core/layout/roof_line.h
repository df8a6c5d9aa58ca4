// The steel line of one wall: as the wall states it, or from the roof over a rectangular outline.
//
// A slope in degrees becomes heights here and nowhere else. Faults: no top stated; a roof over an outline that is no
// rectangle with sides along x and y; a ridge outside the building.
#pragma once

#include "core/job/building.h"
#include "core/layout/height_line.h"
#include "core/units/outcome.h"

namespace ribwright {

Outcome<HeightLine> steelLine(const Building& building, const Wall& wall, Length width);

}  // namespace ribwright
