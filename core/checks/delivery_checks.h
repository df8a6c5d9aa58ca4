// What is found about orders that were placed and about the price list.
#pragma once

#include <vector>

#include "core/checks/finding.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

// Sheets that came short and are not ordered again ("short-not-ordered", look); received and short sheets that together
// are more than was ordered ("received-too-many", look); sheets ordered that nothing needs any more
// ("ordered-not-needed", note, with what they cost). Of prices, where the job states any: sheets without one
// ("no-price", note), and one that stands behind another for the same thing ("price-twice", look). `order` made of
// these layouts.
std::vector<Finding> findingsOfDeliveries(const Job& job, const std::vector<const WallLayout*>& layouts,
                                          const SheetOrder& order);

}  // namespace ribwright
