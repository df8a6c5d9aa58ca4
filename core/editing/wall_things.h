// Openings, penetrations and girts taken off a wall, to be put on one again under ids of their own.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/editing/part_edits.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct WallThings {
  std::vector<Opening> openings;
  std::vector<Penetration> penetrations;
  std::vector<Girt> girts;
};

// Of these parts those that stand on this wall, in the wall's order. Faults: a part that is none of the three, or is
// not there.
Outcome<WallThings> thingsOf(const Wall& wall, const std::vector<Part>& parts);

// Added to the wall under the next ids like their own. `ifWallHeld` is asked.
Outcome<MadeParts> withThings(const Job& job, std::size_t wall, WallThings things);

// The whole thing moved along by its statement: an anchor's distance, a girt's stated ends and height.
Anchor movedAlong(Anchor anchor, Length du);
WallThings movedBy(WallThings things, const FacePoint& by);

// Index of the wall with this letter; absent: there is none.
std::optional<std::size_t> indexOfWall(const Job& job, const std::string& letter);
// Why a part of this kind is not to be edited; of a part that is, why it is not there.
Fault cannotEdit(const Part& part);

}  // namespace ribwright
