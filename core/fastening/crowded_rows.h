// Rows that come too near something once they are drilled where the steel really is.
#pragma once

#include <vector>

#include "core/fastening/batch_reasons.h"
#include "core/fastening/sheet_metal.h"

namespace ribwright {

class CrowdedRows {
 public:
  // Looks at the ordinates of all batches, as long as it lives.
  CrowdedRows(const BatchLook& look, const std::vector<DrillBatch>& batches);

  // Rows of the batch that, at their ordinates, come nearer than 1.5 d to a metal edge of any sheet of the run (AISI
  // S100-16), or nearer to another hole of a sheet than apart() of chosen_pattern.h; indices, rising.
  std::vector<std::int32_t> of(const DrillBatch& batch) const;

 private:
  bool isCrowded(const StackHole& hole, Length z) const;
  bool isOffEdges(const Hole& hole, Length z) const;
  bool isOffHoles(std::int32_t index, Length z) const;

  const BatchLook& look_;
  std::vector<SheetMetal> metal_;                               // parallel to WallLayout::pieces
  std::vector<std::vector<std::vector<std::int32_t>>> module_;  // pieces of each run's modules
  std::vector<std::vector<std::int32_t>> holes_;                // through each piece
  std::vector<Length> heights_;                                 // z of each hole, as drilled
};

}  // namespace ribwright
