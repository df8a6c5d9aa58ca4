// The blanks that give two pieces or more, as drawings, tables and the window show them.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/blank_cuts.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

struct NumberedBlank {
  int number = 0;  // 1, 2 ... in the order of SheetOrder::blanks
  int line = 0;    // OrderLine::line of the sheet that it is
  Blank blank;
  BlankCuts cuts;  // of the sheet as it is ordered; off the shelf: of the blank, once cut from its stock
  std::vector<std::string> marks;  // of its parts
};

// `order` must be of `job` and `layouts`.
std::vector<NumberedBlank> sharedBlanks(const Job& job, const std::vector<const WallLayout*>& layouts,
                                        const SheetOrder& order);

}  // namespace ribwright
