// Where a long wall is broken over pages: at module lines, so that no sheet is torn, and beside openings rather than in
// them.
#pragma once

#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright {

// u of the wall's limits and of the breaks between, rising. No page shows more than `most` (> 0) of the wall unless a
// single sheet is wider than that; pages are about equally long.
std::vector<Length> pageBreaks(const WallLayout& layout, Length most);

}  // namespace ribwright
