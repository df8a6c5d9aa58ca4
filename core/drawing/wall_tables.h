// The tables of an elevation: marks with kinds and lengths, and openings with places and sizes.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/paper_table.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// One row a piece in hanging order: mark, kind, metal width, blank length, order code. `codes` parallel to the layout's
// pieces, or empty.
PaperTable markTable(const WallView& view, const std::vector<std::string>& codes);

// One row an opening or penetration as stated: id, kind, size, left edge from the left corner and from
// the nearest column, sill and head from
// concrete.
PaperTable openingTable(const WallView& view);

}  // namespace ribwright
