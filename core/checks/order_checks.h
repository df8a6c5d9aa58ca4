// What is found about the order as a whole, once its blanks are known.
#pragma once

#include <vector>

#include "core/checks/finding.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

// A stop for each blank of sheets off the shelf that is longer than the longest of them ("longer-than-stock"), at its
// piece that is hung first. Throws std::invalid_argument when a class's profile is not in the job.
std::vector<Finding> findingsOfOrder(const Job& job, const std::vector<const WallLayout*>& layouts,
                                     const SheetOrder& order);

}  // namespace ribwright
