// Whether sheets go on without a gap between two places of one row.
#pragma once

#include <functional>

#include "core/fastening/run_sheets.h"

namespace ribwright {

// Height of the row at t; `beyond`: just beyond t along the hanging direction, else just before it.
using RowHeight = std::function<Length(Length t, bool beyond)>;

// True when every point of the row from t `from` to `to` lies on metal of the run. Both places lie in metal, of modules
// `first` and `last` or beside them; the row is straight between the run's breaks.
bool isMetalBetween(const RunSheets& sheets, std::size_t first, std::size_t last, Length from, Length to,
                    const RowHeight& height);

}  // namespace ribwright
