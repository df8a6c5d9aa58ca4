// The outline of each piece: closed, clockwise, simple, without vertices on straight sides, as large as its cells.
#include <algorithm>
#include <cmath>

#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/ring_geometry.h"

namespace ribwright::fuzz {
namespace {

double lengthOf(const FaceVertex& a, const FaceVertex& b) {
  return std::hypot(static_cast<double>((b.u - a.u).nanometres()), static_cast<double>((b.z - a.z).nanometres()));
}

double around(const Ring& ring) {
  double sum = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) sum += lengthOf(ring[i], ring[(i + 1) % ring.size()]);
  return sum;
}

// How far b stands off the straight way from a to c, in nanometres.
double standsOff(const FaceVertex& a, const FaceVertex& b, const FaceVertex& c) {
  return std::abs(static_cast<double>(turn(a, b, c))) / std::max(1.0, lengthOf(a, c));
}

void checkRing(const Ring& ring, const std::string& mark, Complaints& complaints) {
  if (!complaints.check(ring.size() >= 3, mark + ": a ring of fewer than three vertices")) return;
  complaints.check(twiceArea(ring) < 0, mark + ": a ring is not clockwise");
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const FaceVertex &a = ring[i], &b = ring[(i + 1) % ring.size()], &c = ring[(i + 2) % ring.size()];
    complaints.check(a != b, mark + ": a vertex twice running");
    complaints.check(turn(a, b, c) != 0,
                     mark + ": a vertex on a straight side at u " + std::to_string(b.u.nanometres()));
    complaints.check(standsOff(a, b, c) > 1.5 || std::min(lengthOf(a, b), lengthOf(b, c)) < 100,
                     mark + ": a vertex within rounding of a straight side at u " + std::to_string(b.u.nanometres()));
  }
  for (std::size_t i = 0; i < ring.size(); ++i) {
    for (std::size_t j = i + 1; j < ring.size(); ++j) {
      complaints.check(!crossProperly(ring[i], ring[(i + 1) % ring.size()], ring[j], ring[(j + 1) % ring.size()]),
                       mark + ": a ring crosses itself");
    }
  }
}

}  // namespace

void checkRings(const CheckedWall& wall, Complaints& complaints) {
  for (const Piece& piece : wall.layout.pieces) {
    if (!complaints.check(!piece.rings.empty(), piece.mark + " has no outline")) continue;
    double area = 0, perimeter = 0;
    for (std::size_t i = 0; i < piece.rings.size(); ++i) {
      const Ring& ring = piece.rings[i];
      checkRing(ring, piece.mark, complaints);
      if (ring.size() < 3) return;
      const double size = std::abs(static_cast<double>(twiceArea(ring)));
      area += i == 0 ? size : -size;
      perimeter += around(ring);
      if (i == 0) continue;
      for (const FaceVertex& vertex : ring) {
        complaints.check(placeIn(piece.rings.front(), vertex.u, vertex.z) != Place::Outside,
                         piece.mark + ": an inner ring leaves the outer one");
      }
    }
    const auto cells = static_cast<double>(piece.area.halfSquareNanometres());
    complaints.check(std::abs(area - cells) <= 1e-9 * cells + perimeter,
                     piece.mark + ": its outline's area is off by " + std::to_string((area - cells) / 2) + " nm2");
  }
}

}  // namespace ribwright::fuzz
