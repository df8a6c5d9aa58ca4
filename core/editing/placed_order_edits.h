// Edits of the orders that were placed: facts from site. Each gives the job as it is afterwards.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/takeoff/placed_sheets.h"
#include "core/units/outcome.h"

namespace ribwright {

// An order of these lots is placed: what is to be ordered now (DeltaOrder::toOrder). Faults: nothing to order; no
// number, or one that another order has; what the job file would not hold.
Outcome<Job> placeOrder(const Job& job, std::string_view id, std::string_view date, const std::vector<SheetLot>& lots);

// The same order was never placed.
Outcome<Job> withoutOrder(const Job& job, std::string_view id);

// All of it came that is not short.
Outcome<Job> receiveAll(const Job& job, std::string_view id);

// So many sheets of one kind came fit to hang, and so many came unfit or will not come. More than were ordered may have
// come. Faults: an order or a kind that is not there, less than nothing, what the job file would not hold.
Outcome<Job> setReceived(const Job& job, std::string_view id, const SheetKind& kind, std::int64_t received,
                         std::int64_t missing);

// "1", "2" ...: the first whole number that no order has.
std::string nextOrderNumber(const Job& job);

}  // namespace ribwright
