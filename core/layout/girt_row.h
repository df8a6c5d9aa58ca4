// Where a girt's outer flange takes screws: its screw face and the row in it.
//
// A girt is typed as the plans give it; the face is the usable flat of its outer flange, less the bends at heel and
// lip; the row is its middle. A girt without a stated member has its row at the typed height and a face of no height.
#pragma once

#include <optional>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

// From where to where it stands on a wall of this width, u; from >= to: nowhere.
struct GirtReach {
  Length from, to;
};
GirtReach girtReach(const Girt& girt, Length wallWidth);

// What bends take of a flange that bears on the sheet: at its heel, and at its other edge where a lip or web turns.
struct FlangeBends {
  Length heel, edge;
};
FlangeBends bendsOf(const Member& member);

struct ScrewFace {
  Length low, high, row;  // z
};

ScrewFace girtFace(const Girt& girt, const std::vector<Member>& members);

}  // namespace ribwright
