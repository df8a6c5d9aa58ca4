#include "core/takeoff/sold_lengths.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/cutting/bought_length.h"
#include "core/cutting/stock_cutter.h"

namespace ribwright {
namespace {

// About 20 ms of a desk computer for a class that is hard to prove: an order is made on every edit.
constexpr std::int64_t shelfEffort = 20'000'000;

const Blank& at(const std::vector<Blank>& blanks, int index) { return blanks[static_cast<std::size_t>(index)]; }

PieceRef firstHung(const Blank& blank) {
  const auto first = std::min_element(blank.parts.begin(), blank.parts.end(),
                                      [](const BlankPart& a, const BlankPart& b) { return a.piece < b.piece; });
  return first->piece;
}

bool isMade(const SheetLengths& lengths, Length blank) { return lengthMade(lengths, blank) <= lengths.longest; }

SoldSheet soldAlone(const std::vector<Blank>& blanks, int blank, Length length) {
  return {length, firstHung(at(blanks, blank)), {blank}, at(blanks, blank).length};
}

SoldClass madeToLength(const Settings& settings, const Profile& profile, const std::vector<Blank>& blanks, int from,
                       int to) {
  const std::span all(blanks);
  const bool choose = settings.mostOrderLengths > 0;
  LengthChoice choice;
  if (choose) {
    const auto mine = all.subspan(static_cast<std::size_t>(from), static_cast<std::size_t>(to - from));
    choice = chooseLengths(wantedLengths(profile, mine), settings.spares, settings.mostOrderLengths);
  }
  SoldClass sold;
  for (int blank = from; blank < to; ++blank) {
    const Length length = at(blanks, blank).length;
    const Length made = lengthMade(profile.lengths, length);
    const Length bought = choose && isMade(profile.lengths, length) ? orderLength(choice, made) : made;
    sold.sheets.push_back(soldAlone(blanks, blank, bought));
  }
  return sold;
}

// Blanks of each length that is short enough for the shelf, the longest first, each in the order it is hung.
using Demands = std::map<Length, std::vector<int>, std::greater<>>;

CuttingList listOf(const Demands& demands, const std::vector<Length>& stocked, Length kerf) {
  CuttingList list;
  list.kerf = kerf.nanometres();
  for (const Length length : stocked) list.stocks.push_back({length.nanometres(), length.nanometres()});
  for (const auto& [length, blanks] : demands)
    list.demands.push_back({length.nanometres(), static_cast<std::int64_t>(blanks.size())});
  return list;
}

// Hands the blanks out to the plan's sheets, in the order of both.
void handOut(const CuttingPlan& plan, const Demands& demands, const std::vector<Length>& stocked, Length kerf,
             const std::vector<Blank>& blanks, SoldClass& sold) {
  std::vector<std::pair<Length, std::span<const int>>> left;
  for (const auto& [length, waiting] : demands) left.emplace_back(length, waiting);
  for (const CutPattern& pattern : plan.patterns) {
    for (std::int64_t time = 0; time < pattern.times; ++time) {
      SoldSheet& sheet = sold.sheets.emplace_back();
      sheet.length = stocked[static_cast<std::size_t>(pattern.stock)];
      for (std::size_t demand = 0; demand < left.size(); ++demand) {
        auto& [length, waiting] = left[demand];
        const auto count = static_cast<std::size_t>(pattern.counts[demand]);
        sheet.blanks.insert(sheet.blanks.end(), waiting.begin(), waiting.begin() + static_cast<std::ptrdiff_t>(count));
        waiting = waiting.subspan(count);
        sheet.used += length * pattern.counts[demand];
      }
      sheet.used += kerf * (static_cast<std::int64_t>(sheet.blanks.size()) - 1);
      sheet.first = firstHung(at(blanks, sheet.blanks.front()));
      for (const int blank : sheet.blanks) sheet.first = std::min(sheet.first, firstHung(at(blanks, blank)));
    }
  }
}

// Blanks by their pieces, those of sheets that are cut already: whole blanks, in the sheet's order; of pieces that
// share a blank otherwise now none.
std::vector<int> blanksOf(const CutSheet& sheet, const std::vector<Blank>& blanks, int from, int to) {
  std::vector<int> found;
  std::size_t pieces = 0;
  for (const PieceRef& ref : sheet.pieces) {
    for (int blank = from; blank < to; ++blank) {
      const auto& parts = at(blanks, blank).parts;
      const bool has =
          std::any_of(parts.begin(), parts.end(), [&](const BlankPart& part) { return part.piece == ref; });
      if (!has || std::count(found.begin(), found.end(), blank) > 0) continue;
      found.push_back(blank);
      pieces += parts.size();
    }
  }
  return pieces == sheet.pieces.size() ? found : std::vector<int>();
}

// Takes them out of what is still to be cut.
std::set<int> keepCut(const Settings& settings, const std::vector<CutSheet>& cut, const std::vector<Blank>& blanks,
                      int from, int to, SoldClass& sold) {
  std::set<int> kept;
  for (const CutSheet& sheet : cut) {
    const std::vector<int> own = blanksOf(sheet, blanks, from, to);
    if (own.empty()) continue;
    SoldSheet one{sheet.length, firstHung(at(blanks, own.front())), own, {}};
    for (const int blank : own) {
      one.used += at(blanks, blank).length + settings.kerf;
      one.first = std::min(one.first, firstHung(at(blanks, blank)));
    }
    one.used -= settings.kerf;
    if (one.used > sheet.length) continue;
    kept.insert(own.begin(), own.end());
    sold.sheets.push_back(std::move(one));
  }
  return kept;
}

SoldClass offTheShelf(const Settings& settings, const Profile& profile, const std::vector<Blank>& blanks, int from,
                      int to, const std::vector<CutSheet>& cut) {
  std::vector<Length> stocked = profile.lengths.stocked;
  std::sort(stocked.begin(), stocked.end());
  stocked.erase(std::unique(stocked.begin(), stocked.end()), stocked.end());
  SoldClass sold;
  const std::set<int> kept = keepCut(settings, cut, blanks, from, to, sold);
  Demands demands;
  for (int blank = from; blank < to; ++blank) {
    if (kept.count(blank) > 0) continue;
    const Length length = at(blanks, blank).length;
    if (length <= stocked.back()) {
      demands[length].push_back(blank);
    } else {
      sold.sheets.push_back(soldAlone(blanks, blank, roundUp(length, profile.lengths.increment)));
    }
  }
  if (demands.empty()) return sold;
  for (auto& [length, waiting] : demands) {
    std::stable_sort(waiting.begin(), waiting.end(),
                     [&](int a, int b) { return firstHung(at(blanks, a)) < firstHung(at(blanks, b)); });
  }
  CuttingList list = listOf(demands, stocked, settings.kerf);
  auto plan = cutStock(list, {shelfEffort, {}});
  if (plan) {
    handOut(plan.value(), demands, stocked, settings.kerf, blanks, sold);
    sold.cut = ShelfCut{at(blanks, from).sheet, std::move(list), std::move(plan).value()};
    return sold;
  }
  // More lengths than the cutter takes: each blank from the least sheet that holds it.
  for (const auto& [length, waiting] : demands) {
    for (const int blank : waiting)
      sold.sheets.push_back(soldAlone(blanks, blank, *std::lower_bound(stocked.begin(), stocked.end(), length)));
  }
  return sold;
}

}  // namespace

Length lengthMade(const SheetLengths& lengths, Length blank) {
  const Length made = boughtLength(lengths, blank);
  return made <= lengths.longest ? made : roundUp(blank, lengths.increment);
}

SoldClass soldOf(const Settings& settings, const Profile& profile, const std::vector<Blank>& blanks, int from, int to,
                 const std::vector<CutSheet>& cut) {
  if (profile.lengths.stocked.empty()) return madeToLength(settings, profile, blanks, from, to);
  return offTheShelf(settings, profile, blanks, from, to, cut);
}

std::vector<WantedLength> wantedLengths(const Profile& profile, std::span<const Blank> blanks) {
  std::map<Length, int> counts;
  if (!profile.lengths.stocked.empty()) return {};
  for (const Blank& blank : blanks) {
    if (isMade(profile.lengths, blank.length)) ++counts[lengthMade(profile.lengths, blank.length)];
  }
  std::vector<WantedLength> wanted;
  for (const auto& [length, count] : counts) wanted.push_back({length, count});
  return wanted;
}

}  // namespace ribwright
