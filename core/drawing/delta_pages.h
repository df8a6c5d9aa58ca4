// What is still to be ordered after an order was placed, and what is cut from what lies on site: for the office and the
// site. No money: what things cost is the estimator's, and stands in the window and its table alone.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// Sheets to order now; longer sheets that are cut for a shorter need; what serves as it is; what is left over; what is
// still to come. Sheets that hang are left out. Empty while no order was placed.
std::vector<BarePage> deltaPages(const Job& job, const Plan& plan, const PageFrame& frame);

}  // namespace ribwright
