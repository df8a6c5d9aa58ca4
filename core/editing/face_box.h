// The steel of an opening or penetration as a box on the wall face, and the edges that it can be taken by.
#pragma once

#include <string>
#include <vector>

#include "core/job/building.h"
#include "core/units/length.h"
#include "core/units/outcome.h"

namespace ribwright {

struct FaceBox {
  Length left, right;  // u
  Length bottom, top;  // z
  bool operator==(const FaceBox&) const = default;
};

// Which edges of a box: -1 the left or the lower, 1 the right or the upper, 0 none of the two. Both: a corner.
struct BoxEdge {
  int across = 0, up = 0;
  bool operator==(const BoxEdge&) const = default;
};

FaceBox withEdgeAt(FaceBox box, BoxEdge edge, const FacePoint& to);

// Faults of a box that has no width or no height, each at `place`.
std::vector<Fault> faultsOfBox(const FaceBox& box, const std::string& place);

}  // namespace ribwright
