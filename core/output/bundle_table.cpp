#include "core/output/bundle_table.h"

#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/takeoff/bundles.h"

namespace ribwright {
namespace {

std::vector<std::string> rowOf(const Bundle& bundle, std::size_t place, const SheetOrder& order, UnitSystem units) {
  const BundledSheet& one = bundle.sheets[place];
  const OrderLine& line = order.lines[static_cast<std::size_t>(one.line)];
  const bool spare = one.sheet < 0;
  const auto weight = [&](double kilograms) { return line.translucent ? "" : weightText(kilograms, units); };
  return {bundle.name,
          bundle.wall,
          spare ? "" : smallLength(bundle.setDownFrom, units),
          spare ? "" : smallLength(bundle.setDownTo, units),
          std::to_string(place + 1),
          spare ? "" : line.marks[static_cast<std::size_t>(one.sheet - line.firstSheet)],
          std::to_string(line.line),
          line.profile,
          smallLength(line.thickness, units),
          line.translucent ? "translucent" : line.colour,
          exactText(line.length, units),
          smallLength(line.length, units),
          weight(line.kilogramsOfOne()),
          weight(bundle.kilograms)};
}

}  // namespace

Table bundleTable(const Job& job, const Plan& plan, UnitSystem units) {
  Table table;
  table.columns =
      columnsIn(units, {"bundle", "wall", "set_down_from_in", "set_down_to_in", "place", "marks", "line", "profile",
                        "thickness_in", "colour", "length", "length_in", "weight_lb", "bundle_weight_lb"});
  for (const Bundle& bundle : bundlesOf(job, plan.layouts(), plan.order)) {
    for (std::size_t place = 0; place < bundle.sheets.size(); ++place)
      table.rows.push_back(rowOf(bundle, place, plan.order, units));
  }
  return table;
}

}  // namespace ribwright
