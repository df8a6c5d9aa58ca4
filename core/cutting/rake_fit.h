// How long a blank must be for two pieces along one sloped cut.
#pragma once

#include <optional>

#include "core/cutting/top_edge.h"

namespace ribwright {

// Top edges over x of the blank, each in heights above its own piece's lower end; one piece stands on the blank's lower
// end, the other hangs from its upper end. The length is the least that is
//   >= a(x) + b(x) + the kerf measured upright, for all x that both have, and >= each piece's height,
// a(x) + b(x) exact and then up to the next nanometre, and the kerf measured upright
//   kerf x sqrt(1 + slope^2), up to the next nanometre,
// with the steepest slope of both edges, so that the pieces are a kerf apart everywhere. Absent: they have no x in
// common, or the kerf is wider than 100 mm, or one of them rises more than 20 m.
std::optional<Length> rakeFit(const TopEdge& a, const TopEdge& b, Length kerf);

// The kerf measured upright, as above.
std::optional<Length> uprightKerf(const TopEdge& a, const TopEdge& b, Length kerf);

}  // namespace ribwright
