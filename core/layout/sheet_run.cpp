#include "core/layout/sheet_run.h"

#include <algorithm>

namespace ribwright {

namespace {

RunModule moduleAt(const RunRules& rules, Length line) {
  RunModule module;
  module.line = line;
  module.lead = line + rules.cover;
  module.wholeFrom = line - rules.over;
  module.wholeTo = module.lead + rules.under;
  module.from = std::max(module.wholeFrom, -rules.reachStart);
  module.to = std::min(module.wholeTo, rules.length + rules.reachEnd);
  return module;
}

}  // namespace

std::vector<RunModule> modulesOf(const RunRules& rules) {
  std::vector<RunModule> modules;
  // Where the first full module's starting edge stands off the corner, a ripped one comes before it.
  Length line = rules.offset - rules.over > Length() ? rules.offset - rules.cover : rules.offset;
  Length covered = Length::nanometres(-1);
  const auto moreHang = [&](int n) { return rules.leadingEdges.lower_bound(n) != rules.leadingEdges.end(); };
  for (int n = 0; covered < rules.length || moreHang(n); ++n) {
    if (rules.passedOver.contains(n)) continue;
    RunModule module = moduleAt(rules, line);
    if (const auto measured = rules.leadingEdges.find(n); measured != rules.leadingEdges.end()) {
      module = moduleAt(rules, measured->second - rules.under - rules.cover);
      module.hung = true;
    }
    module.place = n;
    // A measurement that does not go forward, or lies beyond the wall, ends the run.
    const bool forward = modules.empty() || module.wholeTo > modules.back().wholeTo;
    const bool addsNothing = module.to <= covered && !module.hung;
    if (!forward || addsNothing || module.from >= module.to) break;
    covered = module.to;
    line = module.lead;
    modules.push_back(module);
  }
  return modules;
}

}  // namespace ribwright
