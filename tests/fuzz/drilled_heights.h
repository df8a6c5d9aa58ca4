// How near a row, drilled where the steel is, comes to other screws and to metal edges. The checker's own reckoning.
#pragma once

#include <vector>

#include "tests/fuzz/measured_wall.h"

namespace ribwright::fuzz {

class DrilledHeights {
 public:
  DrilledHeights(const MeasuredWall& wall, const std::vector<DrillBatch>& batches);

  // A hole, drilled at z through one of its sheets, breaks what held where it was planned: 1.5 d to every metal edge of
  // its run, the same sheets, max(3 d, 1 in) to every other hole of its sheets.
  bool isCrowded(int hole, Nm z) const;

 private:
  const MeasuredWall& wall_;
  std::vector<Nm> heights_;                // z of each hole as its upper sheet is drilled, else as planned
  std::vector<std::vector<int>> through_;  // holes of each piece
  std::vector<RunMetal> metal_;            // of each run
};

}  // namespace ribwright::fuzz
