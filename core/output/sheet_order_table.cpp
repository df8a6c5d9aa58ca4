#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/tables.h"

namespace ribwright {
namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : " ") + word;
  return text;
}

// Empty for translucent sheets: no profile states what they weigh.
std::string weightCell(const OrderLine& line, UnitSystem units) {
  return line.translucent ? "" : weightText(line.kilograms, units);
}

}  // namespace

Table sheetOrderTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"line", "profile", "thickness_in", "colour", "length", "length_in", "quantity",
                                    "total_length_ft", "area_sqft", "weight_lb", "marks"});
  for (const OrderLine& line : plan.order.lines) {
    table.rows.push_back({std::to_string(line.line), line.profile, smallLength(line.thickness, units),
                          line.translucent ? "translucent" : line.colour, exactText(line.length, units),
                          smallLength(line.length, units), std::to_string(line.quantity()),
                          largeLength(line.length * line.quantity(), units), areaText(line.coverArea, units),
                          weightCell(line, units), joined(line.marks)});
  }
  return table;
}

}  // namespace ribwright
