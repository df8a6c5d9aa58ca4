// Which way a wall hangs, so that nobody standing where the building is normally seen from sees the raw edge of a lap.
//
// Start at the end farther from the sight point and work toward it. Within 1 % of the wall's width of a tie, or where
// the wall faces away from every sight point, start at the end toward which the prevailing wind blows (NAVEDTRA 14251
// ch. 8); a wind with under 1 % along the wall counts as none; then left to right. Common practice otherwise.
#pragma once

#include "core/job/job.h"
#include "core/layout/wall_face.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

HangDirection hangDirection(const Job& job, const Wall& wall, const WallFace& face);

// True when the point lies inside the outline or on its edge; a sight point there counts for nothing.
bool insideOutline(const std::vector<PlanPoint>& outline, const PlanPoint& point);

}  // namespace ribwright
