// The choice among numbers of lengths, class by class of an order.
#pragma once

#include <vector>

#include "core/takeoff/length_tradeoff.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

struct ClassTradeOff {
  SheetClass sheet;
  Length metalWidth;
  std::vector<LengthChoice> choices;  // for at most 1, 2 ... n lengths, n different ones wanted
};

// One of each class that is made to length, in the order of the lines; blanks longer than the longest made are left
// out. Throws std::invalid_argument when a class's profile is not in the job.
std::vector<ClassTradeOff> classTradeOffs(const Job& job, const SheetOrder& order);

}  // namespace ribwright
