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
  for (int n = 0; covered < rules.length; ++n) {
    RunModule module = moduleAt(rules, line);
    if (const auto measured = rules.leadingEdges.find(n); measured != rules.leadingEdges.end()) {
      const Length edge = std::min(measured->second, rules.length + rules.reachEnd + rules.cover);
      module = moduleAt(rules, edge - rules.under - rules.cover);
      module.hung = true;
    }
    if (module.to <= covered) break;  // a measurement that does not go forward ends the run
    covered = module.to;
    line = module.lead;
    modules.push_back(module);
  }
  return modules;
}

}  // namespace ribwright
