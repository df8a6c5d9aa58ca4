// The top edge of a piece, as far as it matters for a pair along one sloped cut.
#pragma once

#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright {

// u, and height above the piece's lowest end; u rising, from the piece's left to its right.
using TopEdge = std::vector<FaceVertex>;

// By the corners of its outer ring. Empty where the edge has no one slope: it is level throughout, has a ridge or a
// valley, a step, or a notch.
TopEdge topEdge(const Piece& piece);

// Upward with u; of an edge that is not empty.
inline bool rises(const TopEdge& edge) { return edge.back().z > edge.front().z; }

}  // namespace ribwright
