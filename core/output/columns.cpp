#include "core/output/columns.h"

#include <string_view>
#include <utility>

namespace ribwright {

std::vector<std::string> columnsIn(UnitSystem units, std::vector<std::string> columns) {
  static constexpr std::pair<std::string_view, std::string_view> metric[] = {
      {"_in", "_mm"}, {"_ft", "_m"}, {"_sqft", "_m2"}, {"_lb", "_kg"}};
  if (units == UnitSystem::FeetInches) return columns;
  for (auto& column : columns) {
    for (const auto& [from, to] : metric) {
      if (!column.ends_with(from)) continue;
      column.replace(column.size() - from.size(), from.size(), to);
      break;
    }
  }
  return columns;
}

}  // namespace ribwright
