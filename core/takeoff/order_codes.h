// What each piece is called on the order.
#pragma once

#include <string>
#include <vector>

#include "core/takeoff/sheet_order.h"

namespace ribwright {

// SheetOrder::codes of an order that is whole but for them.
std::vector<std::vector<std::string>> orderCodes(const SheetOrder& order,
                                                 const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
