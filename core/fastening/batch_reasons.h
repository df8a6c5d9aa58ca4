// Why a batch may not be drilled yet, and what a person can do about it.
#pragma once

#include <vector>

#include "core/fastening/drill_batches.h"
#include "core/fastening/stack_holes.h"

namespace ribwright {

// The wall that batches are of, and what was measured on it.
struct BatchLook {
  const Job& job;
  const Wall& wall;
  const WallLayout& layout;
  const WallHoles& holes;
  const MeasuredFaces& faces;
  const std::vector<PieceHoles>& pieces;  // parallel to WallLayout::pieces
};

// Beyond this a girt is only moved by the engineer's word, whatever its clip's slot allows (common practice).
inline constexpr Length mostGirtMove = Length::inches(0, 32);

// Its clip takes it up: within the slot, where one is stated, and within mostGirtMove.
bool mayMove(const Girt& girt, Length by);

// Sets reasons and remedies of every batch; their pieces and rows stand already.
void giveReasons(const BatchLook& look, std::vector<DrillBatch>& batches);

// The remedies of a batch's reasons, cheapest first.
std::vector<Remedy> remediesOf(const BatchLook& look, const DrillBatch& batch);

// Index into the batch's rows of the one with this key; -1: none.
std::int32_t rowWith(const DrillBatch& batch, const RowKey& key);

}  // namespace ribwright
