// Exact questions about rings of whole nanometres, through 128 bits.
#pragma once

#include <algorithm>
#include <cstddef>

#include "core/layout/wall_layout.h"

namespace ribwright::fuzz {

// Twice the area of the triangle a, b, c: positive when it turns left.
inline Int128 turn(const FaceVertex& a, const FaceVertex& b, const FaceVertex& c) {
  return Int128((b.u - a.u).nanometres()) * (c.z - a.z).nanometres() -
         Int128((c.u - a.u).nanometres()) * (b.z - a.z).nanometres();
}

inline int signOf(Int128 value) { return value < 0 ? -1 : value > 0 ? 1 : 0; }

// Negative when clockwise.
inline Int128 twiceArea(const Ring& ring) {
  Int128 sum = 0;
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) sum += turn(ring[0], ring[i], ring[i + 1]);
  return sum;
}

// Each passes to the other side of the other's inside; touching does not count.
inline bool crossProperly(const FaceVertex& a, const FaceVertex& b, const FaceVertex& c, const FaceVertex& d) {
  return signOf(turn(a, b, c)) * signOf(turn(a, b, d)) < 0 && signOf(turn(c, d, a)) * signOf(turn(c, d, b)) < 0;
}

enum class Place { Outside, Edge, Inside };

inline Place placeIn(const Ring& ring, Length u, Length z) {
  bool inside = false;
  const FaceVertex p{u, z};
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const FaceVertex &a = ring[i], &b = ring[(i + 1) % ring.size()];
    const Int128 side = turn(a, b, p);
    const bool spans =
        std::min(a.u, b.u) <= u && u <= std::max(a.u, b.u) && std::min(a.z, b.z) <= z && z <= std::max(a.z, b.z);
    if (side == 0 && spans) return Place::Edge;
    if ((a.z <= z) == (b.z <= z)) continue;
    if ((side > 0) == (b.z > a.z)) inside = !inside;
  }
  return inside ? Place::Inside : Place::Outside;
}

}  // namespace ribwright::fuzz
