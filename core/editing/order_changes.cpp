#include "core/editing/order_changes.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <tuple>

#include "core/takeoff/cost.h"

namespace ribwright {
namespace {

using SheetSort = std::tuple<std::string, std::string, bool, Length, Length>;

// After less before, kind by kind.
std::map<SheetSort, int> differences(const SheetOrder& before, const SheetOrder& after) {
  std::map<SheetSort, int> counts;
  const auto add = [&](const SheetOrder& order, int sign) {
    for (const OrderLine& line : order.lines)
      counts[{line.profile, line.colour, line.translucent, line.thickness, line.length}] += sign * line.quantity();
  };
  add(before, -1);
  add(after, 1);
  return counts;
}

bool isSame(const Piece& a, const Piece& b) { return a.blankLength == b.blankLength && a.rings == b.rings; }

void compare(const WallLayout* before, const WallLayout& after, OrderChanges& changes) {
  std::map<std::string_view, const Piece*> known;
  if (before) {
    for (const Piece& piece : before->pieces) known.emplace(piece.mark, &piece);
  }
  for (const Piece& piece : after.pieces) {
    const auto was = known.find(piece.mark);
    if (was == known.end() || !isSame(*was->second, piece))
      changes.changedSheets.emplace_back(after.letter, piece.mark);
  }
}

std::string counted(const char* id, std::int64_t count, const Words& words, const LengthStyle& style) {
  return words.say(std::string(id).append(count == 1 ? ".one" : ".many"), {{"count", count}}, style);
}

}  // namespace

OrderChanges orderChanges(const Plan& before, const Plan& after) {
  OrderChanges changes;
  int gone = 0, come = 0;
  for (const auto& [kind, count] : differences(before.order, after.order)) {
    (count < 0 ? gone : come) += std::abs(count);
    changes.more += std::get<4>(kind) * count;
  }
  changes.lengthsChanged = std::max(gone, come);
  changes.sheetsMore = come - gone;
  for (const auto& wall : after.walls) {
    const auto was = std::find_if(before.walls.begin(), before.walls.end(),
                                  [&](const auto& one) { return one->layout.letter == wall->layout.letter; });
    if (was != before.walls.end() && *was == wall) continue;  // not worked anew
    compare(was == before.walls.end() ? nullptr : &(*was)->layout, wall->layout, changes);
  }
  return changes;
}

OrderChanges orderChanges(const Job& jobBefore, const Plan& before, const Job& jobAfter, const Plan& after) {
  OrderChanges changes = orderChanges(before, after);
  const auto was = sheetsCost(jobBefore.prices, before.order), is = sheetsCost(jobAfter.prices, after.order);
  if (!was || !is) return changes;
  changes.costMore = *is - *was;
  changes.currency = jobAfter.prices.currency;
  return changes;
}

std::string orderChangeText(const OrderChanges& changes, const Words& words, const LengthStyle& style) {
  std::string cost;
  if (changes.costMore && *changes.costMore != Money())
    cost = ", " + shownDifference(*changes.costMore, style.decimalSign, changes.currency);
  if (changes.sameOrder()) return words.say("order.same", {}, style) + cost;
  Phrase more{"order.even"};
  if (changes.more != Length())
    more = {changes.more > Length() ? "order.more" : "order.less", {{"length", absolute(changes.more)}}};
  const std::int64_t count = changes.lengthsChanged;
  std::string text =
      words.say(count == 1 ? "order.changed.one" : "order.changed.many", {{"count", count}, {"more", more}}, style);
  const std::int64_t sheets = changes.sheetsMore;
  if (sheets > 0) text += counted("order.sheets-more", sheets, words, style);
  if (sheets < 0) text += counted("order.sheets-fewer", -sheets, words, style);
  return text + cost;
}

}  // namespace ribwright
