#include <algorithm>

#include "core/layout/outline.h"
#include "core/takeoff/order_account.h"

namespace ribwright {
namespace {

// An edge over one column: its height at both sides.
struct Edge {
  Length left, right;
};

// But for the rounding of a crossing.
bool same(const Edge& a, const Edge& b) {
  return absolute(a.left - b.left) <= kRounding && absolute(a.right - b.right) <= kRounding;
}

Edge along(const HeightLine& line, const Cell& cell) {
  return {line.heightAt(cell.left, Beside::Right), line.heightAt(cell.right, Beside::Left)};
}

Area between(const Edge& low, const Edge& high, const Cell& cell) {
  return Area::trapezoid(high.left - low.left, high.right - low.right, cell.right - cell.left);
}

bool over(const CutRegion& cut, const Cell& cell) { return cut.left <= cell.left && cell.right <= cut.right; }

Area cutBelow(const WallLayout& layout, const Piece& piece, const Cell& lowest) {
  const Edge end{lowest.bottomLeft, lowest.bottomRight};
  const Edge wall = along(layout.runs[static_cast<std::size_t>(piece.run)].bottom, lowest);
  for (const CutRegion& cut : layout.cuts) {
    if (!over(cut, lowest) || !same(along(cut.upper, lowest), end)) continue;
    const Length floor = cut.reachesFloor ? piece.bottom : std::max(piece.bottom, cut.bottom);
    const auto low = [&](Length wallAt, Length endAt) { return std::min(std::max(floor, wallAt), endAt); };
    return between({low(wall.left, end.left), low(wall.right, end.right)}, end, lowest);
  }
  return {};
}

Area cutAbove(const WallLayout& layout, const Piece& piece, const Cell& highest) {
  const Edge end{highest.topLeft, highest.topRight};
  const Edge wall = along(layout.runs[static_cast<std::size_t>(piece.run)].top, highest);
  for (const CutRegion& cut : layout.cuts) {
    if (cut.reachesFloor || !over(cut, highest) || !same(along(cut.lower, highest), end)) continue;
    const Length ceiling = std::min(piece.top, cut.top);
    const auto high = [&](Length wallAt, Length endAt) { return std::max(std::min(ceiling, wallAt), endAt); };
    return between(end, {high(wall.left, end.left), high(wall.right, end.right)}, highest);
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
