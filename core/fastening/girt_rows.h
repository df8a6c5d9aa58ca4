// Rows of screws on girts: nested where girts lap, stopped where columns and jambs stand in the way.
#pragma once

#include <vector>

#include "core/fastening/supports.h"

namespace ribwright {

// What interrupts a girt: a flange that takes its row's holes, or the space between two jambs, which takes none.
struct InTheWay {
  Length from, to;  // u
  bool isFlange = false;
  Stretch flange;                      // then: what stands there instead
  std::optional<Length> above, below;  // only for rows strictly between these heights; absent: no bound
};

// From the lowest row up, as in supports.h.
std::vector<SupportRow> girtRows(const Wall& wall, const std::vector<Member>& members, Length wallWidth,
                                 const std::vector<InTheWay>& inTheWay);

}  // namespace ribwright
