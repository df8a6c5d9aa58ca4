// One wall laid out, from what is stated of it.
#pragma once

#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/units/outcome.h"

namespace ribwright {

// Faults: the wall has no place or no top, or a band names a profile that the job does not hold. Findings are not made
// here.
Outcome<WallLayout> layOutWall(const Job& job, const Wall& wall);

}  // namespace ribwright
