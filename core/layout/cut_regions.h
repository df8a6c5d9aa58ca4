// What no sheet may cover: openings and penetrations, grown by their clearances.
//
// An opening is typed steel to steel of its frame. Clearances: its own, or the job's (jamb 1/4, head 1/2, sill 0 in,
// common practice). Where its sill stands at or below the concrete it reaches the floor, and the cut goes down to the
// sheets' lower end. A round penetration is cut as the regular 24-gon about the grown circle, vertices rounded to the
// nanometre, so that no metal lies in the circle.
#pragma once

#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_face.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// Openings whose column does not exist are left out (a finding tells).
std::vector<CutRegion> cutRegions(const Settings& settings, const Wall& wall, const WallFace& face);

}  // namespace ribwright
