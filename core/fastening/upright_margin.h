// A distance taken square to a sloped line, measured upright.
#pragma once

#include "core/layout/height_line.h"

namespace ribwright {

// The smallest whole nanometre that is not less than margin * sqrt(run^2 + rise^2) / run for the straight part of the
// line between `from` and `to` (from < to); the margin itself where the line is level. margin >= 0.
Length uprightMargin(Length margin, const HeightLine& line, Length from, Length to);

}  // namespace ribwright
