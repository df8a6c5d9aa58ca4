// One call: from a Job to all that follows from it.
//
// plan(job) is pure: the same job gives the same plan everywhere. plan(job, previous) gives exactly the same, and works
// anew only the walls whose statements changed.
#pragma once

#include <memory>
#include <vector>

#include "core/checks/finding.h"
#include "core/fastening/drill_batches.h"
#include "core/fastening/holes.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/takeoff/sheet_order.h"

namespace ribwright {

// All that one wall's layout, holes and checks read, and what came of it.
struct WallPlan {
  Job reads;  // the job reduced to what this wall's layout, holes and checks read
  WallLayout layout;
  WallHoles holes;
  std::vector<DrillBatch> batches;
  std::vector<Finding> findings;
};

struct Plan {
  std::vector<std::shared_ptr<const WallPlan>> walls;  // in the job's order
  SheetOrder order;
  std::vector<Finding> findings;  // of the walls and of the whole job; silenced ones left out, stops first

  bool hasStop() const;
  std::vector<const WallLayout*> layouts() const;
};

Plan plan(const Job& job);
Plan plan(const Job& job, const Plan& previous);

}  // namespace ribwright
