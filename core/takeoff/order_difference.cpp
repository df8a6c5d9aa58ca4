#include "core/takeoff/order_difference.h"

#include <tuple>

namespace ribwright {
namespace {

struct ChangeKey {
  BoughtThing thing;
  Length length;
  friend bool operator<(const ChangeKey& a, const ChangeKey& b) {
    return std::tie(a.thing, b.length) < std::tie(b.thing, a.length);
  }
};

using Changes = std::map<ChangeKey, LineChange>;

void add(std::optional<Money>& sum, const std::optional<Money>& amount) {
  if (!sum) return;
  if (amount)
    *sum += *amount;
  else
    sum.reset();
}

LineChange& changeOf(const CostLine& line, Changes& changes) {
  const auto [at, isNew] = changes.try_emplace({line.thing, line.length});
  if (isNew) {
    at->second.thing = line.thing;
    at->second.length = line.length;
    at->second.costBefore = at->second.costAfter = Money();
  }
  return at->second;
}

bool differs(const LineChange& line) {
  return line.before != line.after || line.gramsBefore != line.gramsAfter || line.costBefore != line.costAfter;
}

}  // namespace

std::optional<Money> LineChange::costMore() const {
  if (!costBefore || !costAfter) return std::nullopt;
  return *costAfter - *costBefore;
}

OrderDifference orderDifference(const JobCost& before, const JobCost& after) {
  Changes changes;
  for (const CostLine& line : before.lines) {
    LineChange& change = changeOf(line, changes);
    change.before += line.quantity;
    change.gramsBefore += line.measure.grams.value_or(0);
    add(change.costBefore, line.amount);
  }
  for (const CostLine& line : after.lines) {
    LineChange& change = changeOf(line, changes);
    change.after += line.quantity;
    change.gramsAfter += line.measure.grams.value_or(0);
    add(change.costAfter, line.amount);
  }
  OrderDifference difference;
  difference.costMore = Money();
  for (const auto& [key, change] : changes) {
    if (!differs(change)) continue;
    difference.lines.push_back(change);
    difference.gramsMore += change.gramsAfter - change.gramsBefore;
    add(difference.costMore, change.costMore());
    difference.pricedMore += change.costMore().value_or(Money());
    if (change.thing.what != Price::What::Sheet) continue;
    difference.sheetsMore += change.more();
    difference.lengthMore += change.length * change.more();
  }
  return difference;
}

}  // namespace ribwright
