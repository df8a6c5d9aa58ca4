// Trim as rules and stock have it.
#pragma once

#include <vector>

#include "core/checks/finding.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// Few: one a rule, a trim, or a kind of place; heads alone each on its own. None where a job states no rule.
void checkTrims(const Job& job, const std::vector<const WallLayout*>& layouts, std::vector<Finding>& findings);

}  // namespace ribwright
