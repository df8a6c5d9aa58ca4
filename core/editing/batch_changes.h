// What an edit did to the drill batches: a batch that was cleared and is not any more must not be drilled.
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace ribwright {

struct BatchChanges {
  // Ids in the plan after the edit.
  std::vector<std::string> heldAgain;  // a sheet of theirs was cleared for drilling before, and is not any more
  std::vector<std::string> cleared;    // cleared now, and a sheet of theirs was not before
  std::vector<std::string> redrawn;    // cleared now and before, but with other rows: an older template is void
  bool none() const { return heldAgain.empty() && cleared.empty() && redrawn.empty(); }
  bool operator==(const BatchChanges&) const = default;
};

// Sheets are told apart by wall and mark, since an edit may cut the wall into other batches. What was not in the plan
// before (a new wall, a new sheet) was not cleared.
BatchChanges batchChanges(const Plan& before, const Plan& after);

}  // namespace ribwright
