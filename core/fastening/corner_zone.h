// Wind edge strips: how far from a wall's corners the corner pattern holds.
//
// All exact but for halves, tenths and fifths of a nanometre, rounded half to even.
#pragma once

#include <optional>

#include "core/job/job.h"
#include "core/layout/wall_face.h"

namespace ribwright {

// ASCE 7-02 to 7-22, components and cladding, walls, zone 5: a = min(0.1 B, 0.4 h), not less than max(0.04 B, 3 ft).
// B: least horizontal dimension; h: mean roof height, for slopes under 10 degrees the eave height.
Length asceEdgeStrip(Length leastDimension, Length height);

// EN 1991-1-4 7.2.2 and figure 7.5, e = min(b, 2 h): A = e/5, B = 4 e/5, C = d - e where e < d; A = e/5, B = d - e/5
// where d <= e < 5 d; A = d where 5 d <= e.
struct EnStrips {
  Length a, b, c;
  bool operator==(const EnStrips&) const = default;
};
// b: dimension across the wind, d: along it, h: height, all > 0.
EnStrips enStrips(Length b, Length d, Length height);

// The width that takes the corner pattern at both ends of this wall; 0 with rule None. Absent when the rule needs what
// is not stated: ASCE 7 and EN 1991-1-4 need the building's outline, EN 1991-1-4 also steel above the concrete.
//
// Heights stand above the top of concrete. Where the building states a roof, they are those of its steel line over
// every edge of the outline; without a roof only this wall's own steel line is looked at, since what another wall
// states must not change this one.
// ASCE 7: B is the lesser side of the outline's box; eave the lowest end of a line, mean roof height half way from
// there to the highest point, taken where some line slopes 10 degrees or more (a height that came from degrees lies
// within half a nanometre of them). EN 1991-1-4: the wind blows along the wall, d is the wall's width, b the outline's
// box across the wall's own direction (for a wall askew, or without a place: the lesser side), h the highest point.
std::optional<Length> cornerZone(const Job& job, const Wall& wall, const WallFace& face);

}  // namespace ribwright
