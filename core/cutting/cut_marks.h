// Pieces that were ordered out of one sheet, of which one hangs: the sheet is cut, and the others lie cut too.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/blank.h"

namespace ribwright {

struct CutSheet {
  Length length;                 // as it was ordered
  std::vector<PieceRef> pieces;  // two or more, as its marks name them ("B3+C5"), from the sheet's lower end up
};

// In the order in which they were placed; a piece is in one at most, that which was placed first. Left out: sheets of
// which none hangs, or of which the layouts have not all pieces any more.
std::vector<CutSheet> cutSheets(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
