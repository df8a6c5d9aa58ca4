#include "core/cutting/top_edge.h"

#include <algorithm>

namespace ribwright {
namespace {

// The highest corner at this end of the ring.
std::size_t highestAt(const Ring& ring, Length u) {
  std::size_t found = ring.size();
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (ring[i].u == u && (found == ring.size() || ring[i].z > ring[found].z)) found = i;
  }
  return found;
}

bool goesOneWay(const TopEdge& edge) {
  bool up = false, down = false;
  for (std::size_t i = 1; i < edge.size(); ++i) {
    if (edge[i].u <= edge[i - 1].u) return false;
    up = up || edge[i].z > edge[i - 1].z;
    down = down || edge[i].z < edge[i - 1].z;
  }
  return up != down;
}

}  // namespace

TopEdge topEdge(const Piece& piece) {
  if (piece.rings.empty()) return {};
  const Ring& ring = piece.rings.front();
  const std::size_t left = highestAt(ring, piece.left), right = highestAt(ring, piece.right);
  if (left == ring.size() || right == ring.size()) return {};
  TopEdge edge;
  for (std::size_t i = left;; i = (i + 1) % ring.size()) {
    edge.push_back({ring[i].u, ring[i].z - piece.bottom});
    if (i == right) break;
  }
  if (!goesOneWay(edge)) edge.clear();
  return edge;
}

}  // namespace ribwright
