#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "tests/fuzz/order_checker.h"

namespace ribwright::fuzz {
namespace {

Length steps(Length length, Length step) {
  const std::int64_t l = length.nanometres(), s = step.nanometres();
  return Length::nanometres((l + s - 1) / s * s);
}

// Sheets wanted of each length made.
using Wanted = std::map<Length, int>;

std::int64_t boughtAt(const std::vector<Length>& lengths, const Wanted& wanted, const Spares& rule) {
  std::int64_t sum = 0;
  auto next = wanted.begin();
  for (const Length length : lengths) {
    int count = 0, more = 0;
    for (; next != wanted.end() && next->first <= length; ++next) count += next->second;
    while (more < rule.fewest || more * 100 < count * rule.percent) ++more;
    sum += length.nanometres() * (count + more);
  }
  return sum;
}

// The least that any choice of so many buys; only for short lists.
std::optional<std::int64_t> leastByTrying(const Wanted& wanted, const Spares& rule, int most) {
  if (wanted.size() > 11) return std::nullopt;
  std::optional<std::int64_t> least;
  for (unsigned set = 0; set < 1U << (wanted.size() - 1); ++set) {
    std::vector<Length> lengths;
    unsigned bit = 0;
    for (const auto& [length, count] : wanted) {
      if (bit + 1 == wanted.size() || (set >> bit & 1U)) lengths.push_back(length);
      ++bit;
    }
    if (int(lengths.size()) > most) continue;
    const std::int64_t bought = boughtAt(lengths, wanted, rule);
    if (!least || bought < *least) least = bought;
  }
  return least;
}

struct OfClass {
  std::vector<const OrderLine*> lines;
  std::vector<const OrderedSheet*> sheets;
};

void checkMade(const CheckedOrder& checked, const Profile& profile, const OfClass& of, Complaints& complaints) {
  const int most = checked.job.settings.mostOrderLengths;
  const SheetLengths& lengths = profile.lengths;
  Wanted wanted;
  std::set<Length> chosen;
  for (const OrderedSheet* sheet : of.sheets) {
    complaints.check(sheet->blanks.size() == 1, "a sheet made to length gives several blanks");
    const Length own = steps(sheet->used, lengths.increment);
    const Length made = steps(std::max(sheet->used, lengths.shortest), lengths.increment);
    const Length bought = checked.lineOf(*sheet).length;
    if (most == 0 || made > lengths.longest) {
      complaints.check(bought == (made > lengths.longest ? own : made), "ordered otherwise than it is wanted");
    } else {
      ++wanted[made];
      chosen.insert(bought);
      complaints.check(bought >= made, "ordered shorter than it is made");
    }
  }
  if (wanted.empty()) return;
  complaints.check(int(chosen.size()) <= most, "more lengths than may be");
  for (const OrderedSheet* sheet : of.sheets) {
    const Length made = steps(std::max(sheet->used, lengths.shortest), lengths.increment);
    if (made > lengths.longest) continue;
    complaints.check(checked.lineOf(*sheet).length == *chosen.lower_bound(made), "a shorter length would have served");
  }
  const std::vector<Length> all(chosen.begin(), chosen.end());
  const auto least = leastByTrying(wanted, checked.job.settings.spares, most);
  complaints.check(!least || boughtAt(all, wanted, checked.job.settings.spares) == *least, "other lengths buy less");
}

void checkShelf(const CheckedOrder& checked, const Profile& profile, const SheetClass& sheet, const OfClass& of,
                Complaints& complaints) {
  const auto& stocked = profile.lengths.stocked;
  const Length longest = *std::max_element(stocked.begin(), stocked.end());
  std::int64_t total = 0;
  for (const OrderedSheet* one : of.sheets) {
    const Length bought = checked.lineOf(*one).length;
    if (one->used > longest) {
      complaints.check(bought == steps(one->used, profile.lengths.increment) && one->blanks.size() == 1,
                       "too long for the shelf, and not ordered as it is");
      continue;
    }
    complaints.check(std::find(stocked.begin(), stocked.end(), bought) != stocked.end(), "not a length on the shelf");
    total += bought.nanometres();
  }
  const auto& cuts = checked.order.shelfCuts;
  const auto cut = std::find_if(cuts.begin(), cuts.end(), [&](const ShelfCut& c) { return c.sheet == sheet; });
  if (!complaints.check((cut != cuts.end()) == (total > 0), "no plan for the shelf")) return;
  if (cut == cuts.end()) return;
  complaints.check(cut->plan.total == total && cut->plan.bound <= total, "the plan is not what is bought");
  std::int64_t needed = 0;
  for (const CutDemand& demand : cut->list.demands) needed += demand.length * demand.count;
  complaints.check(total >= needed, "less is bought than comes out");
}

}  // namespace

void checkOrderLengths(const CheckedOrder& checked, Complaints& complaints) {
  std::map<SheetClass, OfClass> classes;
  for (const OrderLine& line : checked.order.lines) classes[line.sheet()].lines.push_back(&line);
  for (const OrderedSheet& sheet : checked.order.sheets)
    classes[checked.lineOf(sheet).sheet()].sheets.push_back(&sheet);
  for (const auto& [sheet, of] : classes) {
    const Profile& profile = checked.profile(sheet.profile);
    if (profile.lengths.stocked.empty()) {
      checkMade(checked, profile, of, complaints);
    } else {
      checkShelf(checked, profile, sheet, of, complaints);
    }
  }
}

}  // namespace ribwright::fuzz
