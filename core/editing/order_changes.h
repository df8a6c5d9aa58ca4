// What an edit did to the order: a sheet of another length must be cut anew, or ordered.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/plan/plan.h"
#include "core/units/money.h"
#include "core/words/words.h"

namespace ribwright {

struct OrderChanges {
  int lengthsChanged = 0;  // sheets that are ordered now and were not before, or the other way about: the greater of
                           // both, so that a sheet of another length counts once
  Length more;             // of all blanks together; negative: less
  int sheetsMore = 0;      // negative: fewer
  // Letter and mark of every piece of the plan after the edit that is new, or whose outline, blank or place differs.
  std::vector<std::pair<std::string, std::string>> changedSheets;
  std::optional<Money> costMore;  // of all sheets; absent where some have no price, before or after, or one has no sum
  std::string currency;           // of that, as the job after the edit writes it
  // Nothing to order otherwise; sheets may have moved.
  bool sameOrder() const { return lengthsChanged == 0 && sheetsMore == 0 && more == Length(); }
  bool operator==(const OrderChanges&) const = default;
};

// Sheets are told apart by profile, thickness, colour, translucent or not, and length, over the whole building.
OrderChanges orderChanges(const Plan& before, const Plan& after);

// Also what the sheets cost more, at each job's own prices.
OrderChanges orderChanges(const Job& jobBefore, const Plan& before, const Job& jobAfter, const Plan& after);

// "3 lengths changed, +2' 4", +$18.20", "1 length changed, −4", 1 sheet fewer", "the same lengths".
std::string orderChangeText(const OrderChanges& changes, const Words& words, const LengthStyle& style);

}  // namespace ribwright
