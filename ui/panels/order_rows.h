// What is ordered and how it is packed, as rows of tables.
#pragma once

#include "core/takeoff/bundles.h"
#include "core/takeoff/order_account.h"
#include "ui/panels/row_table.h"
#include "ui/session/session.h"

namespace ribwright {

// A row a line of the order.
RowTexts orderRows(const Session& session, const OrderAccount& account);
// A row a bundle: how it lies, from the top, and where it is set down.
RowTexts bundleRows(const Session& session, const std::vector<Bundle>& bundles);

// "rib-36 0.5 mm, barn red".
QString classText(const Session& session, const SheetClass& sheet);
// "12.34 sq ft", "1.23 m²".
QString areaWords(const Session& session, const Area& area);

// The pieces of an order's line, or of a bundle, as parts, of one wall: the chosen one if it has any of them.
std::vector<Part> partsOf(const Session& session, const std::vector<int>& sheets);

}  // namespace ribwright
