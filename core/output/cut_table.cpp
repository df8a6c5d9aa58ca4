#include <algorithm>

#include "core/output/columns.h"
#include "core/output/figures.h"
#include "core/output/tables.h"

namespace ribwright {
namespace {

// A corner of a piece that lies face up, lowest end towards the feet.
struct LyingCorner {
  Length x;  // from the starting metal edge
  Length y;  // from the lowest end
};

// Where a wall hangs right to left the starting edge is the right one and x grows to the left; the corners still go
// round as on the wall, clockwise.
std::vector<LyingCorner> lying(const Ring& ring, const Piece& piece, Hand hand) {
  std::vector<LyingCorner> corners;
  corners.reserve(ring.size());
  for (const FaceVertex& vertex : ring) {
    const Length x = hand == Hand::LeftToRight ? vertex.u - piece.left : piece.right - vertex.u;
    corners.push_back({x, vertex.z - piece.bottom});
  }
  const auto first = std::min_element(corners.begin(), corners.end(), [](const LyingCorner& a, const LyingCorner& b) {
    return a.x != b.x ? a.x < b.x : a.y < b.y;
  });
  std::rotate(corners.begin(), first, corners.end());
  return corners;
}

void appendPiece(Table& table, const Piece& piece, Hand hand, UnitSystem units) {
  for (std::size_t ring = 0; ring < piece.rings.size(); ++ring) {
    int corner = 0;
    for (const LyingCorner& at : lying(piece.rings[ring], piece, hand)) {
      table.rows.push_back({piece.mark, std::to_string(ring), std::to_string(++corner), smallLength(at.x, units),
                            smallLength(at.y, units)});
    }
  }
}

}  // namespace

Table cutTable(const Plan& plan, UnitSystem units) {
  Table table;
  table.columns = columnsIn(units, {"mark", "ring", "corner", "x_in", "y_in"});
  for (const WallLayout* wall : plan.layouts()) {
    for (const Piece& piece : wall->pieces) appendPiece(table, piece, wall->direction.hand, units);
  }
  return table;
}

}  // namespace ribwright
