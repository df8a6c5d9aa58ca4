// What trim pages list, as blocks that flow down them.
#pragma once

#include <vector>

#include "core/drawing/page_flow.h"
#include "core/drawing/trim_flat.h"
#include "core/job/job.h"
#include "core/takeoff/trim_cuts.h"

namespace ribwright {

struct TrimLook {
  const Job& job;
  const TrimTakeoff& takeoff;
  const std::vector<TrimBatch>& batches;
  TrimWords words;
  Box work;
};

// Each trim with its section, and each of its rules with a flat piece and all that is cut so.
std::vector<PageBlock> trimKinds(const TrimLook& look);
// Wall by wall, what lies under first; corners last.
std::vector<PageBlock> trimSettingOrder(const TrimLook& look);
// Every stick, what becomes of the steel, and the proof.
std::vector<PageBlock> trimCutPlan(const TrimLook& look);

}  // namespace ribwright
