// Widths of tiles side by side, to scale where there is room for it.
#pragma once

#include <vector>

namespace ribwright {

// Whole pixels for each of `sizes`, in proportion to them but never below its own `least`; together they fill `room`,
// or are all at their least where that is not enough.
std::vector<int> stripWidths(const std::vector<double>& sizes, const std::vector<int>& least, int room);

}  // namespace ribwright
