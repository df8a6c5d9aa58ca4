#include "core/takeoff/cut_shape.h"

#include <algorithm>
#include <utility>

namespace ribwright {
namespace {

using Corner = std::pair<Length, Length>;
using Corners = std::vector<Corner>;

// The same ring always begins at the same corner: the least, and where a ring passes it twice, the way on that is less.
Corners fromLeastCorner(const Corners& ring) {
  const Corner least = *std::min_element(ring.begin(), ring.end());
  Corners best;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (ring[i] != least) continue;
    Corners turned = ring;
    std::rotate(turned.begin(), turned.begin() + static_cast<std::ptrdiff_t>(i), turned.end());
    if (best.empty() || turned < best) best = std::move(turned);
  }
  return best;
}

Corners inSheet(const Ring& ring, const Piece& piece, const Module& module, Hand hand) {
  Corners corners;
  corners.reserve(ring.size());
  for (const FaceVertex& vertex : ring) {
    if (hand == Hand::LeftToRight) {
      corners.emplace_back(vertex.u - module.startLine, vertex.z - piece.bottom);
    } else {
      corners.emplace_back(module.startLine - vertex.u, piece.top - vertex.z);
    }
  }
  return corners.empty() ? corners : fromLeastCorner(corners);
}

}  // namespace

CutShape cutShape(const Piece& piece, const Module& module, Hand hand) {
  std::vector<Corners> rings;
  rings.reserve(piece.rings.size());
  for (const Ring& ring : piece.rings) rings.push_back(inSheet(ring, piece, module, hand));
  if (rings.size() > 2) std::sort(rings.begin() + 1, rings.end());  // the holes, in whichever order they were found
  CutShape shape;
  for (const Corners& ring : rings) {
    shape.figures.push_back(static_cast<std::int64_t>(ring.size()));
    for (const Corner& corner : ring) {
      shape.figures.push_back(corner.first.nanometres());
      shape.figures.push_back(corner.second.nanometres());
    }
  }
  return shape;
}

bool isUncut(const Piece& piece, Length bought) {
  return piece.kind == PieceKind::Full && bought == piece.top - piece.bottom;
}

}  // namespace ribwright
