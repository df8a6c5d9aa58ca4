#include "core/fastening/crowded_rows.h"

#include <algorithm>

#include "core/fastening/chosen_pattern.h"

namespace ribwright {

CrowdedRows::CrowdedRows(const BatchLook& look, const std::vector<DrillBatch>& batches)
    : look_(look), module_(look.layout.runs.size()), holes_(look.layout.pieces.size()) {
  for (std::size_t run = 0; run < module_.size(); ++run) module_[run].resize(look.layout.runs[run].modules.size());
  for (std::size_t i = 0; i < look.layout.pieces.size(); ++i) {
    const Piece& piece = look.layout.pieces[i];
    const auto index = static_cast<std::int32_t>(i);
    metal_.push_back(sheetMetal(look.layout, index));
    module_[static_cast<std::size_t>(piece.run)][static_cast<std::size_t>(piece.module)].push_back(index);
  }
  for (std::size_t i = 0; i < look.holes.holes.size(); ++i) {
    const Hole& hole = look.holes.holes[i];
    heights_.push_back(hole.z);
    for (int sheet = 0; sheet < hole.sheets; ++sheet)
      holes_[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(sheet)])].push_back(
          static_cast<std::int32_t>(i));
  }
  for (const DrillBatch& batch : batches) {
    for (const std::int32_t piece : batch.pieces) {
      for (const StackHole& hole : look.pieces[static_cast<std::size_t>(piece)].stack) {
        const Hole& placed = look.holes.holes[static_cast<std::size_t>(hole.hole)];
        if (placed.pieces[static_cast<std::size_t>(placed.upper)] != piece) continue;
        const BatchRow& row = batch.rows[static_cast<std::size_t>(rowWith(batch, hole.key))];
        heights_[static_cast<std::size_t>(hole.hole)] = metal_[static_cast<std::size_t>(piece)].shape->bottom + row.s;
      }
    }
  }
}

std::vector<std::int32_t> CrowdedRows::of(const DrillBatch& batch) const {
  std::vector<bool> crowded(batch.rows.size());
  for (const std::int32_t piece : batch.pieces) {
    for (const StackHole& hole : look_.pieces[static_cast<std::size_t>(piece)].stack) {
      const auto row = static_cast<std::size_t>(rowWith(batch, hole.key));
      if (crowded[row]) continue;
      crowded[row] = isCrowded(hole, metal_[static_cast<std::size_t>(piece)].shape->bottom + batch.rows[row].s);
    }
  }
  std::vector<std::int32_t> rows;
  for (std::size_t i = 0; i < crowded.size(); ++i) {
    if (crowded[i]) rows.push_back(static_cast<std::int32_t>(i));
  }
  return rows;
}

// What stands where it was planned was held to all this when it was placed.
bool CrowdedRows::isCrowded(const StackHole& hole, Length z) const {
  const Hole& placed = look_.holes.holes[static_cast<std::size_t>(hole.hole)];
  return z != placed.z && !(isOffEdges(placed, z) && isOffHoles(hole.hole, z));
}

bool CrowdedRows::isOffEdges(const Hole& hole, Length z) const {
  const Length reach = fromEdge(look_.job.screws[static_cast<std::size_t>(hole.screw)]);
  const auto& modules = module_[static_cast<std::size_t>(hole.run)];
  const Piece& owner = look_.layout.pieces[static_cast<std::size_t>(hole.pieces[0])];
  const auto first = static_cast<std::size_t>(std::max(owner.module - 2, 0));
  const auto end = std::min(static_cast<std::size_t>(owner.module) + 3, modules.size());
  for (std::size_t module = first; module < end; ++module) {
    for (const std::int32_t piece : modules[module]) {
      const bool through =
          std::find(hole.pieces.begin(), hole.pieces.begin() + hole.sheets, piece) != hole.pieces.begin() + hole.sheets;
      const Standing standing = standingOf(metal_[static_cast<std::size_t>(piece)], hole.u, z, reach);
      if (standing.nearEdge || standing.inside != through) return false;
    }
  }
  return true;
}

bool CrowdedRows::isOffHoles(std::int32_t index, Length z) const {
  const Hole& hole = look_.holes.holes[static_cast<std::size_t>(index)];
  const Screw& screw = look_.job.screws[static_cast<std::size_t>(hole.screw)];
  for (int sheet = 0; sheet < hole.sheets; ++sheet) {
    for (const std::int32_t other : holes_[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(sheet)])]) {
      if (other == index) continue;
      const Hole& beside = look_.holes.holes[static_cast<std::size_t>(other)];
      const Length limit = apart(screw, look_.job.screws[static_cast<std::size_t>(beside.screw)]);
      const Int128 u = (hole.u - beside.u).nanometres();
      const Int128 up = (z - heights_[static_cast<std::size_t>(other)]).nanometres();
      if (u * u + up * up < Int128(limit.nanometres()) * limit.nanometres()) return false;
    }
  }
  return true;
}

}  // namespace ribwright
