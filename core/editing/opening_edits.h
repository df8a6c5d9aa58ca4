// Edits of a wall's openings. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls. Places are u and z of the frame's steel. An opening stays anchored as it was
// stated: the same column or corner, near jamb or centre; only the distance changes. Nothing is clamped: what would
// leave no width or height is a fault. Faults of every call but adding: the wall has no such opening; the column it is
// anchored from is not there.
#pragma once

#include <cstddef>
#include <string>

#include "core/editing/face_box.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// u from jamb to jamb, z from sill to head, as stated. Fault: its anchor points nowhere.
Outcome<FaceBox> openingBox(const Job& job, const Wall& wall, const Opening& opening);

// The opening as a rectangle between two places in any order, under the next id of its kind: from the nearest column,
// or from the left corner where there is none, to its left jamb. A window's sill is the lower place; a door stands on
// the concrete under it, and the upper place is its head.
Outcome<Opening> drawnOpening(const Job& job, std::size_t wall, Opening::Kind kind, FacePoint a, FacePoint b);

// An opening without an id is given the next one of its kind. Fault: its id is taken on this wall.
Outcome<Job> addOpening(const Job& job, std::size_t wall, Opening opening);
// Moved only.
Outcome<Job> openingMovedTo(const Job& job, std::size_t wall, const std::string& id, Length leftJamb, Length sill);
Outcome<Job> openingSetTo(const Job& job, std::size_t wall, const std::string& id, const FaceBox& box);
// One edge or corner is taken to a place, the others stay.
Outcome<Job> openingEdgeMovedTo(const Job& job, std::size_t wall, const std::string& id, BoxEdge edge, FacePoint to);
// What names it (a start at its jamb) is left as stated, and found by the checks.
Outcome<Job> openingRemoved(const Job& job, std::size_t wall, const std::string& id);

}  // namespace ribwright
