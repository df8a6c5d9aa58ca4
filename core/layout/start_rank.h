// How good a start is, of one run or of a whole wall.
#pragma once

#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/units/area.h"

namespace ribwright {

// Smaller is better, compared in this order: stops, seams near jambs, narrow rips, sheets, different lengths, waste,
// smallest offset. Stops are blanks longer than they come, and faces left open.
struct StartRank {
  int stops = 0, seamsNearJambs = 0, narrowRips = 0, sheets = 0, lengths = 0;
  Area waste;
  Length offset;
  auto operator<=>(const StartRank&) const = default;
};

// `pieces`: of this run alone.
StartRank rankOf(const Settings& settings, const Profile& profile, const std::vector<CutRegion>& cuts,
                 const SheetRun& run, const std::vector<Piece>& pieces);
// All runs together; the offset is that of the run that is hung first. A wall without runs ranks as nothing.
StartRank rankOf(const Job& job, const Wall& wall, const WallLayout& layout);

// Metal that is bought for these pieces: their blanks by the profile's whole width.
Area blanksOf(const Profile& profile, const std::vector<Piece>& pieces);

}  // namespace ribwright
