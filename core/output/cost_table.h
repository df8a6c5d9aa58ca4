// What a job costs, and what is still to be ordered, as tables. Money is kept out of the packet, which goes to the
// site.
#pragma once

#include <string_view>

#include "core/job/job.h"
#include "core/output/csv.h"
#include "core/takeoff/cost.h"
#include "core/takeoff/delta_order.h"
#include "core/takeoff/order_difference.h"
#include "core/units/length_text.h"

namespace ribwright {

// row,what,item,colour,thickness_in,length_in,quantity,spares,total_length_ft,area_sqft,weight_lb,per,price,amount,
// for_spares,for_waste,currency. row: "line" for each line of the cost, blank price and amount where none applies; then
// "wall" (item: its letter, "" of no wall), "kind" (item: costKindWord), and one "total". Lines, walls and kinds each
// add up to the total to the cent.
Table costTable(const Job& job, const JobCost& cost, UnitSystem units);

// list,profile,thickness_in,colour,length,length_in,quantity,cut_to_in,order_state,marks. list: "order" what is to be
// ordered now; "use" what serves needs, cut to `cut_to`, order_state "on site" or "to come"; "left" what nothing needs;
// "to come" all that is ordered and not there yet.
Table deltaOrderTable(const DeltaOrder& delta, UnitSystem units);

// what,item,colour,thickness_in,length_in,before,after,more,weight_more_lb,cost_before,cost_after,cost_more: a row each
// thing that two states buy differently, and a last one, what "total".
Table orderDifferenceTable(const OrderDifference& difference, UnitSystem units);

// "full", "rip" ... "spare", "trim", "cut", "charge".
std::string_view costKindWord(CostKind kind);

}  // namespace ribwright
