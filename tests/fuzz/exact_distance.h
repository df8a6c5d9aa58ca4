// Distances between whole points and sides, compared exactly through 128 bits. Sides up to 100 m, limits up to 30 mm.
#pragma once

#include "tests/fuzz/ring_geometry.h"
#include "tests/fuzz/stated_line.h"

namespace ribwright::fuzz {

inline Int128 squareOf(Nm a, Nm b) { return Int128(a) * a + Int128(b) * b; }

inline bool nearerThan(const FaceVertex& p, const FaceVertex& q, Nm limit) {
  return squareOf((p.u - q.u).nanometres(), (p.z - q.z).nanometres()) < Int128(limit) * limit;
}

// Whether p is nearer than `limit` to the straight side from a to b.
inline bool nearerThan(const FaceVertex& p, const FaceVertex& a, const FaceVertex& b, Nm limit) {
  const Length away = Length::nanometres(limit);
  if (p.u <= std::min(a.u, b.u) - away || p.u >= std::max(a.u, b.u) + away) return false;
  if (p.z <= std::min(a.z, b.z) - away || p.z >= std::max(a.z, b.z) + away) return false;
  const Nm du = (b.u - a.u).nanometres(), dz = (b.z - a.z).nanometres();
  const Int128 along = Int128(du) * (p.u - a.u).nanometres() + Int128(dz) * (p.z - a.z).nanometres();
  const Int128 square = squareOf(du, dz);
  if (along <= 0) return nearerThan(p, a, limit);
  if (along >= square) return nearerThan(p, b, limit);
  // Twice the triangle over the side is the side times its height; beyond this bound no limit up to 30 mm is met.
  const Int128 twice = turn(a, b, p);
  const Int128 bound = Int128(10'000'000'000'000'000'000ULL);
  if (twice > bound || twice < -bound) return false;
  return twice * twice < Int128(limit) * limit * square;
}

inline bool nearerThan(const FaceVertex& p, const Ring& ring, Nm limit) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (nearerThan(p, ring[i], ring[(i + 1) % ring.size()], limit)) return true;
  }
  return false;
}

}  // namespace ribwright::fuzz
