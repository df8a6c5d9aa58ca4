#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/tables.h"
#include "core/takeoff/order_account.h"

namespace ribwright {
namespace {

// Empty for translucent sheets: no profile states what they weigh.
std::string weightCell(const OrderLine& line, double kilograms, UnitSystem units) {
  return line.translucent ? "" : weightText(kilograms, units);
}

std::string blankLengths(const SheetOrder& order, const OrderLine& line, UnitSystem units) {
  std::vector<std::string> sheets;
  for (int i = 0; i < line.hung(); ++i) {
    std::string& lengths = sheets.emplace_back();
    for (const int blank : order.sheets[static_cast<std::size_t>(line.firstSheet + i)].blanks) {
      if (!lengths.empty()) lengths += '+';
      lengths += smallLength(order.blanks[static_cast<std::size_t>(blank)].length, units);
    }
  }
  return spaced(sheets);
}

}  // namespace

Table sheetOrderTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"line",          "profile",    "thickness_in",     "colour",      "length",
                                    "length_in",     "quantity",   "total_length_ft",  "area_sqft",   "weight_lb",
                                    "marks",         "spares",     "blank_lengths_in", "metal_sqft",  "pieces_sqft",
                                    "cut_outs_sqft", "drops_sqft", "waste_sqft",       "spares_sqft", "waste_lb"});
  const OrderAccount account = orderAccount(plan.order, plan.layouts());
  for (const OrderLine& line : plan.order.lines) {
    const SteelAccount& steel = account.lines[static_cast<std::size_t>(line.line - 1)];
    table.rows.push_back({std::to_string(line.line),
                          line.profile,
                          smallLength(line.thickness, units),
                          line.translucent ? "translucent" : line.colour,
                          exactText(line.length, units),
                          smallLength(line.length, units),
                          std::to_string(line.quantity()),
                          largeLength(line.length * line.quantity(), units),
                          areaText(line.coverArea, units),
                          weightCell(line, line.kilograms, units),
                          spaced(line.marks),
                          std::to_string(line.spares),
                          blankLengths(plan.order, line, units),
                          areaText(steel.bought, units),
                          areaText(steel.pieces, units),
                          areaText(steel.cutOuts, units),
                          areaText(steel.drops, units),
                          areaText(steel.waste, units),
                          areaText(steel.spares, units),
                          weightCell(line, steel.wasteKilograms, units)});
  }
  return table;
}

}  // namespace ribwright
