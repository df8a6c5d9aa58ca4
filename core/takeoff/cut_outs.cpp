#include <algorithm>

#include "core/takeoff/order_account.h"

namespace ribwright {
namespace {

// An edge over one column: its height at both sides.
struct Edge {
  Length left, right;
  bool operator==(const Edge&) const = default;
};

Edge along(const HeightLine& line, const Cell& cell) {
  return {line.heightAt(cell.left, Beside::Right), line.heightAt(cell.right, Beside::Left)};
}

Area between(const Edge& low, const Edge& high, const Cell& cell) {
  return Area::trapezoid(high.left - low.left, high.right - low.right, cell.right - cell.left);
}

bool over(const CutRegion& cut, const Cell& cell) { return cut.left <= cell.left && cell.right <= cut.right; }

Area cutBelow(const WallLayout& layout, const Piece& piece, const Cell& lowest) {
  const Edge end{lowest.bottomLeft, lowest.bottomRight};
  if (end == Edge{piece.bottom, piece.bottom}) return {};
  const Edge wall = along(layout.runs[static_cast<std::size_t>(piece.run)].bottom, lowest);
  for (const CutRegion& cut : layout.cuts) {
    if (!over(cut, lowest) || along(cut.upper, lowest) != end) continue;
    const Length floor = cut.reachesFloor ? piece.bottom : std::max(piece.bottom, cut.bottom);
    return between({std::max(floor, wall.left), std::max(floor, wall.right)}, end, lowest);
  }
  return {};
}

Area cutAbove(const WallLayout& layout, const Piece& piece, const Cell& highest) {
  const Edge end{highest.topLeft, highest.topRight};
  if (end == Edge{piece.top, piece.top}) return {};
  const Edge wall = along(layout.runs[static_cast<std::size_t>(piece.run)].top, highest);
  for (const CutRegion& cut : layout.cuts) {
    if (cut.reachesFloor || !over(cut, highest) || along(cut.lower, highest) != end) continue;
    const Length ceiling = std::min(piece.top, cut.top);
    return between(end, {std::min(ceiling, wall.left), std::min(ceiling, wall.right)}, highest);
  }
  return {};
}

}  // namespace

Area cutOutsOf(const WallLayout& layout, const Piece& piece) {
  Area sum;
  const auto& cells = piece.cells;
  for (std::size_t from = 0, to = 0; from < cells.size(); from = to) {
    while (to < cells.size() && cells[to].left == cells[from].left) ++to;
    sum += cutBelow(layout, piece, cells[from]);
    for (std::size_t i = from + 1; i < to; ++i) {
      sum +=
          between({cells[i - 1].topLeft, cells[i - 1].topRight}, {cells[i].bottomLeft, cells[i].bottomRight}, cells[i]);
    }
    sum += cutAbove(layout, piece, cells[to - 1]);
  }
  return sum;
}

}  // namespace ribwright
