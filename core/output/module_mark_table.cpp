#include "core/layout/module_marks.h"
#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/tables.h"

namespace ribwright {

Table moduleMarkTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns =
      columnsIn(units, {"wall", "band", "mark", "leading_edge_u_in", "base_in", "top_girt_in", "plumb_check", "hung"});
  for (const auto& wall : plan.walls) {
    const WallLayout& layout = wall->layout;
    for (const ModuleMark& mark : moduleMarks(layout)) {
      const std::string at = smallLength(mark.running, units);
      const int band = layout.runs[static_cast<std::size_t>(mark.run)].band;
      table.rows.push_back({layout.letter, std::to_string(band + 1), mark.mark, smallLength(mark.u, units), at, at,
                            mark.plumb ? "yes" : "", mark.hung ? "yes" : ""});
    }
  }
  return table;
}

}  // namespace ribwright
