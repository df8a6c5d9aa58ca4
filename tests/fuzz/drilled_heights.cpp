#include "tests/fuzz/drilled_heights.h"

#include <algorithm>

#include "tests/fuzz/exact_distance.h"

namespace ribwright::fuzz {
DrilledHeights::DrilledHeights(const MeasuredWall& wall, const std::vector<DrillBatch>& batches)
    : wall_(wall), through_(wall.layout().pieces.size()) {
  const auto& holes = wall.holes().holes;
  for (std::size_t i = 0; i < holes.size(); ++i) {
    heights_.push_back(nm(holes[i].z));
    for (int sheet = 0; sheet < holes[i].sheets; ++sheet)
      through_[static_cast<std::size_t>(holes[i].pieces[static_cast<std::size_t>(sheet)])].push_back(
          static_cast<int>(i));
  }
  for (const DrillBatch& batch : batches) {
    for (const BatchRow& row : batch.rows) {
      for (const std::int32_t index : row.holes) {
        const Hole& hole = holes[static_cast<std::size_t>(index)];
        const int upper = hole.pieces[static_cast<std::size_t>(hole.upper)];
        if (std::find(batch.pieces.begin(), batch.pieces.end(), upper) == batch.pieces.end()) continue;
        heights_[static_cast<std::size_t>(index)] = nm(wall.piece(upper).bottom + row.s);
      }
    }
  }
  for (std::size_t run = 0; run < wall.layout().runs.size(); ++run)
    metal_.emplace_back(wall.layout(), static_cast<int>(run));
}

bool DrilledHeights::isCrowded(int index, Nm z) const {
  const auto& holes = wall_.holes().holes;
  const Hole& hole = holes[static_cast<std::size_t>(index)];
  const RunMetal& metal = metal_[static_cast<std::size_t>(hole.run)];
  const Nm u = nm(hole.u);
  if (metal.nearEdge(u, z, wall_.fromEdge(hole.screw))) return true;
  std::vector<int> sheets(hole.pieces.begin(), hole.pieces.begin() + hole.sheets), met = metal.through(u, z);
  std::sort(sheets.begin(), sheets.end());
  std::sort(met.begin(), met.end());
  if (sheets != met) return true;
  const auto diameter = [&](const Hole& one) {
    return nm(wall_.job().screws[static_cast<std::size_t>(one.screw)].diameter);
  };
  return std::any_of(sheets.begin(), sheets.end(), [&](int sheet) {
    const auto& others = through_[static_cast<std::size_t>(sheet)];
    return std::any_of(others.begin(), others.end(), [&](int other) {
      if (other == index) return false;
      const Hole& beside = holes[static_cast<std::size_t>(other)];
      const Nm limit = std::max({3 * diameter(hole), 3 * diameter(beside), kInch});
      const Nm du = u - nm(beside.u), dz = z - heights_[static_cast<std::size_t>(other)];
      return squareOf(du, dz) < Int128(limit) * limit;
    });
  });
}

}  // namespace ribwright::fuzz
