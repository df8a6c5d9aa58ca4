// Two states of a job compared by what they buy: what a change costs.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/takeoff/cost.h"

namespace ribwright {

// Things of one kind and length: what one state buys, and the other.
struct LineChange {
  BoughtThing thing;
  Length length;  // 0: a cut or a charge
  std::int64_t before = 0, after = 0;
  std::int64_t gramsBefore = 0, gramsAfter = 0;  // 0 where no weight is stated
  // 0 of nothing; absent: it is bought and has no price.
  std::optional<Money> costBefore, costAfter;

  std::int64_t more() const { return after - before; }
  // Absent where either is.
  std::optional<Money> costMore() const;
  // As many as before, for another price.
  bool onlyPrice() const { return before == after; }
  bool operator==(const LineChange&) const = default;
};

struct OrderDifference {
  std::vector<LineChange>
      lines;                    // that differ in quantity, weight or money: sheets, trim, cuts, charges; longest first
  std::int64_t sheetsMore = 0;  // negative: fewer
  Length lengthMore;            // of all sheets together
  std::int64_t gramsMore = 0;   // of sheets and trim
  // Of the totals; absent where a line that differs has no price, before or after. Then `pricedMore` is of the others.
  std::optional<Money> costMore;
  Money pricedMore;

  bool none() const { return lines.empty(); }
};

OrderDifference orderDifference(const JobCost& before, const JobCost& after);

}  // namespace ribwright
