// Stops of a wall hold its batches.
#include <algorithm>

#include "core/fastening/drill_batches.h"

namespace ribwright {
namespace {

// A finding names a piece, or a sheet that openings have cut into several: "B7" for "B7.1" and "B7.2".
bool names(const std::string& mark, const Piece& piece) {
  return piece.mark == mark || (piece.mark.starts_with(mark) && piece.mark[mark.size()] == '.');
}

bool isOfSheet(const WallLayout& layout, const std::string& mark) {
  return !mark.empty() && std::any_of(layout.pieces.begin(), layout.pieces.end(),
                                      [&](const Piece& piece) { return names(mark, piece); });
}

bool names(const std::string& mark, const DrillBatch& batch, const WallLayout& layout) {
  return std::any_of(batch.pieces.begin(), batch.pieces.end(),
                     [&](std::int32_t piece) { return names(mark, layout.pieces[static_cast<std::size_t>(piece)]); });
}

}  // namespace

void holdForStops(std::vector<DrillBatch>& batches, const WallLayout& layout, const std::vector<FoundStop>& stops) {
  for (const FoundStop& stop : stops) {
    const bool ofSheet = isOfSheet(layout, stop.mark);
    for (DrillBatch& batch : batches) {
      if (ofSheet && !names(stop.mark, batch, layout)) continue;
      const auto reason = static_cast<std::int32_t>(batch.reasons.size());
      batch.reasons.push_back({HoldReason::Why::Stop, stop.finding, -1, {}, {}, {}});
      batch.remedies.push_back({Remedy::What::Mend, reason, stop.finding, {}, {}, {}});
    }
  }
}

}  // namespace ribwright
