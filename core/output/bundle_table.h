// bundles.csv: how the order is packed, sheet by sheet.
#pragma once

#include "core/output/csv.h"
#include "core/plan/plan.h"
#include "core/units/length_text.h"

namespace ribwright {

// Every sheet of the order in its bundle: place 1 is the top, which is hung first. set_down: u on the wall between
// which the bundle's sheets are hung, empty for spares, which have no marks and no wall. line: of sheet-order.csv.
// bundle_weight: of the whole bundle, in each of its rows; weights are empty for translucent sheets.
Table bundleTable(const Job& job, const Plan& plan, UnitSystem units);

}  // namespace ribwright
