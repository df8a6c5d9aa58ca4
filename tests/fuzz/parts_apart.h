// Whether two parts of a blank keep a kerf between them, measured square to their sides; exact, through 128 bits.
#pragma once

#include <utility>

#include "tests/fuzz/ring_geometry.h"

namespace ribwright::fuzz {

// Nearer to the side than `kerf`; exact.
inline bool near(const FaceVertex& p, const FaceVertex& a, const FaceVertex& b, Length kerf) {
  const auto square = [](Length x, Length y) {
    return Int128(x.nanometres()) * x.nanometres() + Int128(y.nanometres()) * y.nanometres();
  };
  const Int128 wide = Int128(kerf.nanometres()) * kerf.nanometres();
  if (square(p.u - a.u, p.z - a.z) < wide || square(p.u - b.u, p.z - b.z) < wide) return true;
  const Int128 along = Int128((b.u - a.u).nanometres()) * (p.u - a.u).nanometres() +
                       Int128((b.z - a.z).nanometres()) * (p.z - a.z).nanometres();
  const Int128 side = square(b.u - a.u, b.z - a.z);
  if (along < 0 || along > side) return false;
  const Int128 twice = turn(a, b, p), off = twice < 0 ? -twice : twice;
  if (off > Int128(1) << 62) return false;  // more than a hundred millimetres off any side of fifty metres
  return off * off < wide * side;
}

// Neither overlaps the other, nor comes nearer than `kerf` to it; touching is no overlap.
inline bool apart(const Ring& a, const Ring& b, Length kerf) {
  for (const auto& [one, other] : {std::pair(&a, &b), std::pair(&b, &a)}) {
    for (const FaceVertex& corner : *one) {
      if (placeIn(*other, corner.u, corner.z) == Place::Inside) return false;
      for (std::size_t i = 0; i < other->size(); ++i) {
        if (near(corner, (*other)[i], (*other)[(i + 1) % other->size()], kerf)) return false;
      }
    }
  }
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      if (crossProperly(a[i], a[(i + 1) % a.size()], b[j], b[(j + 1) % b.size()])) return false;
    }
  }
  return true;
}

}  // namespace ribwright::fuzz
