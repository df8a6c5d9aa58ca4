// Costs, their differences and what is still to be ordered, as rows of tables.
#pragma once

#include <QString>
#include <vector>

#include "core/takeoff/cost.h"
#include "core/takeoff/delta_order.h"
#include "core/takeoff/order_difference.h"
#include "ui/panels/part_model.h"

namespace ribwright {

QString kindText(CostKind kind);
// "rib-36 light stone", "cuts", "delivery".
QString thingText(const BoughtThing& thing);
QString classText(const SheetClass& sheet);
QString moneyOf(const Job& job, Money money);
// "12.50 sq ft", "31.2 lb"; in metric jobs m² and kg.
QString areaWords(const Job& job, Area area);
QString weightWords(const Job& job, double kilograms);

PartRows costRows(const Job& job, const JobCost& cost);
PartRows differenceRows(const Job& job, const OrderDifference& difference);
// What is to be ordered, what serves, what is left; all that is to come stands with its order.
PartRows deltaRows(const Job& job, const DeltaOrder& delta);

// One row each kind of sheet of each order.
struct PlacedRow {
  std::string order, date;
  SheetKind kind;
  PlacedCount count;
};
std::vector<PlacedRow> placedRows(const Job& job);
PartRows shownRows(const Job& job, const std::vector<PlacedRow>& rows);

}  // namespace ribwright
