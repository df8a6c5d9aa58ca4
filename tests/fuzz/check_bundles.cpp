#include <algorithm>
#include <map>
#include <set>

#include "tests/fuzz/order_checker.h"

namespace ribwright::fuzz {
namespace {

bool withinLimits(const CheckedOrder& checked, const std::vector<BundledSheet>& sheets) {
  const Bundles& limits = checked.job.settings.bundles;
  double kilograms = 0;
  Length longest, shortest = Length::feet(100'000);
  for (const BundledSheet& one : sheets) {
    const OrderLine& line = checked.order.lines[std::size_t(one.line)];
    kilograms += line.kilogramsOfOne();
    longest = std::max(longest, line.length);
    shortest = std::min(shortest, line.length);
  }
  return sheets.size() == 1 || (int(sheets.size()) <= limits.mostSheets && kilograms <= limits.heaviestKilograms &&
                                longest - shortest <= limits.lengthSpread);
}

void checkOne(const CheckedOrder& checked, const Bundle& bundle, Complaints& complaints) {
  complaints.check(withinLimits(checked, bundle.sheets), "bundle " + bundle.name + " passes a limit");
  Length from = Length::feet(100'000), to = -from;
  for (std::size_t i = 0; i < bundle.sheets.size(); ++i) {
    const BundledSheet& one = bundle.sheets[i];
    complaints.check(checked.order.lines[std::size_t(one.line)].sheet() == bundle.sheet, "classes are mixed");
    complaints.check((one.sheet < 0) == bundle.wall.empty(), "spares among sheets to be hung");
    if (one.sheet < 0) continue;
    const OrderedSheet& sheet = checked.order.sheets[std::size_t(one.sheet)];
    complaints.check(sheet.line == one.line, "a bundled sheet of another line");
    complaints.check(checked.layouts[std::size_t(sheet.first.wall)]->letter == bundle.wall, "walls are mixed");
    const bool after = i == 0 || checked.order.sheets[std::size_t(bundle.sheets[i - 1].sheet)].first < sheet.first;
    complaints.check(after, "what is hung first does not lie on top");
    from = std::min(from, checked.piece(sheet.first).left);
    to = std::max(to, checked.piece(sheet.first).right);
  }
  if (!bundle.wall.empty())
    complaints.check(bundle.setDownFrom == from && bundle.setDownTo == to, "set down elsewhere than it is hung");
}

}  // namespace

void checkBundles(const CheckedOrder& checked, const std::vector<Bundle>& bundles, Complaints& complaints) {
  std::set<int> packed;
  std::map<int, int> spares;
  std::set<std::string> names;
  for (const Bundle& bundle : bundles) {
    complaints.check(names.insert(bundle.name).second && !bundle.sheets.empty(), "a bundle without name or sheets");
    for (const BundledSheet& one : bundle.sheets) {
      if (one.sheet < 0) {
        ++spares[one.line];
      } else {
        complaints.check(packed.insert(one.sheet).second, "a sheet is packed twice");
      }
    }
    checkOne(checked, bundle, complaints);
  }
  complaints.check(packed.size() == checked.order.sheets.size(), "a sheet is not packed");
  for (std::size_t i = 0; i < checked.order.lines.size(); ++i)
    complaints.check(spares[int(i)] == checked.order.lines[i].spares, "spares are not packed");
  // A bundle is closed only where it must be.
  for (std::size_t i = 1; i < bundles.size(); ++i) {
    const Bundle& before = bundles[i - 1];
    if (before.wall != bundles[i].wall || before.sheet != bundles[i].sheet) continue;
    std::vector<BundledSheet> more = before.sheets;
    more.push_back(bundles[i].sheets.front());
    complaints.check(!withinLimits(checked, more), "bundle " + before.name + " could hold one more");
  }
}

}  // namespace ribwright::fuzz
