// All findings of a wall, and those of the whole job.
#pragma once

#include <vector>

#include "core/checks/finding.h"
#include "core/fastening/drill_batches.h"
#include "core/fastening/holes.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/units/outcome.h"

namespace ribwright {

// A check that fails in itself becomes a finding "check-failed"; the others go on.
std::vector<Finding> findingsOf(const Job& job, const Wall& wall, const WallLayout& layout, const WallHoles& holes,
                                const std::vector<DrillBatch>& batches = {});

// Stops among them that hold a wall's drill batches. Left out is what batches know themselves and hold for a reason of
// their own (HoldReason::Why::Chalk).
std::vector<FoundStop> stopsThatHold(const std::vector<Finding>& findings);

// A wall that could not be laid out at all.
Finding notLaidOut(const Wall& wall, const Fault& fault);

// What concerns more than one wall: corners, sight points, hung sheets of no wall, what openings are called, the
// numbers of hole patterns.
std::vector<Finding> findingsOfJob(const Job& job);

}  // namespace ribwright
