#include "core/takeoff/bundles.h"

#include <algorithm>
#include <map>

namespace ribwright {
namespace {

class Packing {
 public:
  Packing(const Job& job, const SheetOrder& order) : limits_(job.settings.bundles), order_(order) {}

  // `sheets` of one wall (or spares) and one class, from the top.
  void pack(const std::vector<BundledSheet>& sheets, const std::string& wall, const SheetClass& sheet) {
    std::vector<std::size_t> open;  // indices of bundles, the one begun last at the end
    for (const BundledSheet& one : sheets) {
      const auto holds = [&](std::size_t i) { return isNear(bundles[i], one) && takes(bundles[i], one); };
      const auto found = std::find_if(open.rbegin(), open.rend(), holds);
      const std::size_t into = found == open.rend() ? bundles.size() : *found;
      if (into == bundles.size()) {
        std::erase_if(open, [&](std::size_t i) { return isNear(bundles[i], one); });
        begin(wall, sheet);
        open.push_back(into);
      }
      lay(bundles[into], one);
    }
  }

  std::vector<Bundle> bundles;

 private:
  const OrderLine& line(const BundledSheet& one) const { return order_.lines[static_cast<std::size_t>(one.line)]; }

  // In length.
  bool isNear(const Bundle& open, const BundledSheet& one) const {
    const Length length = line(one).length;
    return std::max(open.longest, length) - std::min(open.shortest, length) <= limits_.lengthSpread;
  }

  bool takes(const Bundle& open, const BundledSheet& one) const {
    return static_cast<int>(open.sheets.size()) < limits_.mostSheets &&
           open.kilograms + line(one).kilogramsOfOne() <= limits_.heaviestKilograms;
  }

  void begin(const std::string& wall, const SheetClass& sheet) {
    Bundle& made = bundles.emplace_back();
    made.name = (wall.empty() ? "spare" : wall) + '-' + std::to_string(++counts_[wall]);
    made.wall = wall;
    made.sheet = sheet;
  }

  void lay(Bundle& bundle, const BundledSheet& one) {
    const Length length = line(one).length;
    bundle.longest = std::max(bundle.longest, length);
    bundle.shortest = bundle.sheets.empty() ? length : std::min(bundle.shortest, length);
    bundle.kilograms += line(one).kilogramsOfOne();
    bundle.sheets.push_back(one);
  }

  const Bundles& limits_;
  const SheetOrder& order_;
  std::map<std::string, int> counts_;  // bundles of each wall
};

void setDown(Bundle& bundle, const Layouts& layouts, const SheetOrder& order) {
  bool first = true;
  for (const BundledSheet& one : bundle.sheets) {
    const PieceRef& ref = order.sheets[static_cast<std::size_t>(one.sheet)].first;
    const Piece& piece = layouts[static_cast<std::size_t>(ref.wall)]->pieces[static_cast<std::size_t>(ref.piece)];
    bundle.setDownFrom = first ? piece.left : std::min(bundle.setDownFrom, piece.left);
    bundle.setDownTo = first ? piece.right : std::max(bundle.setDownTo, piece.right);
    first = false;
  }
}

// Of each wall and class its sheets, in hanging order; of one wall the class that is hung first comes first.
std::vector<std::vector<BundledSheet>> hungSheets(const SheetOrder& order) {
  const auto first = [&](const BundledSheet& one) { return order.sheets[static_cast<std::size_t>(one.sheet)].first; };
  std::vector<BundledSheet> sheets;
  for (std::size_t i = 0; i < order.sheets.size(); ++i) sheets.push_back({order.sheets[i].line, static_cast<int>(i)});
  std::sort(sheets.begin(), sheets.end(),
            [&](const BundledSheet& a, const BundledSheet& b) { return first(a) < first(b); });
  std::vector<std::vector<BundledSheet>> groups;
  std::map<std::pair<int, SheetClass>, std::size_t> known;
  for (const BundledSheet& one : sheets) {
    const SheetClass sheet = order.lines[static_cast<std::size_t>(one.line)].sheet();
    const auto group = known.emplace(std::pair(first(one).wall, sheet), groups.size());
    if (group.second) groups.emplace_back();
    groups[group.first->second].push_back(one);
  }
  return groups;
}

// Of each class its spares, the shortest on top.
std::map<SheetClass, std::vector<BundledSheet>> spareSheets(const SheetOrder& order) {
  std::map<SheetClass, std::vector<BundledSheet>> all;
  for (std::size_t i = order.lines.size(); i-- > 0;) {
    const OrderLine& line = order.lines[i];
    if (line.spares > 0)
      all[line.sheet()].insert(all[line.sheet()].end(), static_cast<std::size_t>(line.spares),
                               {static_cast<int>(i), -1});
  }
  return all;
}

}  // namespace

std::vector<Bundle> bundlesOf(const Job& job, const Layouts& layouts, const SheetOrder& order) {
  Packing packing(job, order);
  for (const auto& sheets : hungSheets(order)) {
    const OrderedSheet& first = order.sheets[static_cast<std::size_t>(sheets.front().sheet)];
    packing.pack(sheets, layouts[static_cast<std::size_t>(first.first.wall)]->letter,
                 order.lines[static_cast<std::size_t>(first.line)].sheet());
  }
  for (Bundle& bundle : packing.bundles) setDown(bundle, layouts, order);
  for (const auto& [sheet, sheets] : spareSheets(order)) packing.pack(sheets, "", sheet);
  return std::move(packing.bundles);
}

}  // namespace ribwright
