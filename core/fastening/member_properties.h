// Gross properties of a member's cross-section, for beam arithmetic: doubles, that never decide where metal is.
//
// Axes as a girt stands on the wall: y along the depth (level, toward the sheets, from the inner flange's outer face),
// x along the flange (upright, from the web's outer face; of a hat from one web's, of a wide flange from a flange's
// edge).
//
// By line elements: the middle line's straight parts, as rectangles t thick, and its quarter circles, as lines that
// weigh t; inside corner radius Member::bendRadius.
//
//   zed, cee      two flanges of one width; lips square to them (a zed's may really lean)
//   angle         `depth` is the level leg, `flange` the one on the sheets
//   hat           `flange` is the crown, `depth` that of both webs, `lip` the outside width of each foot, turned away
//   wide flange   web and flanges `thickness` thick, no fillets
#pragma once

#include <optional>

#include "core/job/supports.h"

namespace ribwright {

struct MemberProperties {
  double area = 0;                      // mm2
  double kilogramsPerMetre = 0;         // 7850 kg/m3
  double centroidX = 0, centroidY = 0;  // mm
  double strong = 0;                    // Ix: integral of y2, mm4, about the centroid
  double weak = 0;     // Iy: integral of x2, mm4: about the line through the centroid that the web runs along
  double product = 0;  // Ixy, mm4; other than 0 for a zed and an angle
};

// Nothing: thickness and bends do not fit into depth, flange and lip.
std::optional<MemberProperties> memberProperties(const Member& member);

// What a load along x (upright on the wall) bends against while the member is free to move sideways, as a girt is
// before sheets hold it: (Ix Iy - Ixy^2) / Ix. A zed and an angle bend sideways too, and so farther down than Iy alone
// would let them; where Ixy is 0 it is Iy. mm4.
double inertiaUnderOwnWeight(const MemberProperties& properties);

// Modulus of elasticity, N/mm2. Wide flanges are hot-rolled, everything else is formed cold.
enum class ModulusBy {
  American,  // cold-formed 29,500 ksi (AISI S100), hot-rolled 29,000 ksi (AISC 360)
  European,  // 210,000 N/mm2 (EN 1993-1-1 3.2.6)
};
double modulusOf(const Member& member, ModulusBy by);

}  // namespace ribwright
