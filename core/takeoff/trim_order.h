// In which order pieces of trim are set: what lies under first.
#pragma once

#include <vector>

#include "core/layout/wall_layout.h"
#include "core/takeoff/trim_pieces.h"

namespace ribwright {

// Whether `under` and `over` are of one opening, meet, and `under` lies under the other. Sill and jamb meet, jamb and
// head, and one cover the other. When just one of the two rules says how its ends lie, or both say the same thing of
// the joint, that holds; otherwise the upper lies over the lower, so that water runs out.
bool liesUnder(const TrimPiece& under, const TrimPiece& over);

// As TrimTakeoff::pieces says. Pieces that are alike in this stay in their order.
void intoSettingOrder(std::vector<TrimPiece>& pieces, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
