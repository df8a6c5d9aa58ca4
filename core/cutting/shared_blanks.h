// The blanks that give two pieces or more, as drawings, tables and the window show them.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/blank_cuts.h"

namespace ribwright {

struct NumberedBlank {
  int number = 0;  // 1, 2 ... in the order of shareBlanks
  Blank blank;
  BlankCuts cuts;                  // of a sheet as long as it is made
  std::vector<std::string> marks;  // of its parts
};

// Throws as shareBlanks.
std::vector<NumberedBlank> sharedBlanks(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
