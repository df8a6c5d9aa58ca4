#include "core/fastening/sheet_metal.h"

#include <algorithm>

namespace ribwright {
namespace {

struct Offset {
  Int128 u = 0, z = 0;
};

Offset offset(const FaceVertex& from, const FaceVertex& to) {
  return {(to.u - from.u).nanometres(), (to.z - from.z).nanometres()};
}

Int128 product(const Offset& a, const Offset& b) { return a.u * b.u + a.z * b.z; }
Int128 turn(const Offset& a, const Offset& b) { return a.u * b.z - a.z * b.u; }
Int128 size(Int128 value) { return value < 0 ? -value : value; }

// A distance from the line through the edge, |turn| / |edge|, under r. Squares stay inside 128 bits: what is far off is
// told by the sum of the edge's legs first, and a very long edge is shortened, which moves the line less than a
// millionth of a nanometre.
bool isNearLine(Int128 across, const Offset& edge, Int128 r) {
  across = size(across);
  Int128 legs = size(edge.u) + size(edge.z);
  if (across >= r * legs) return false;
  Offset shorter = edge;
  while (legs > (Int128(1) << 38)) {
    across /= 2;
    shorter = {shorter.u / 2, shorter.z / 2};
    legs /= 2;
  }
  return across * across < r * r * product(shorter, shorter);
}

bool isNear(const FaceVertex& a, const FaceVertex& b, const FaceVertex& p, Length r) {
  const auto beyond = [r](Length low, Length high, Length at) { return at <= low - r || at >= high + r; };
  if (beyond(std::min(a.u, b.u), std::max(a.u, b.u), p.u)) return false;
  if (beyond(std::min(a.z, b.z), std::max(a.z, b.z), p.z)) return false;
  const Int128 reach = r.nanometres();
  const Offset edge = offset(a, b), fromA = offset(a, p), fromB = offset(b, p);
  if (product(fromA, edge) <= 0) return product(fromA, fromA) < reach * reach;
  if (product(fromB, edge) >= 0) return product(fromB, fromB) < reach * reach;
  return isNearLine(turn(edge, fromA), edge, reach);
}

template <class Use>
void eachEdge(const Piece& piece, const Use& use) {
  for (const Ring& ring : piece.rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) use(ring[i], ring[i + 1 == ring.size() ? 0 : i + 1]);
  }
}

bool hasOneCellAColumn(const Piece& piece) {
  for (std::size_t i = 0; i + 1 < piece.cells.size(); ++i) {
    if (piece.cells[i].right != piece.cells[i + 1].left) return false;
  }
  return !piece.cells.empty();
}

Length heightAt(Length left, Length zLeft, Length right, Length zRight, Length u) {
  if (zLeft == zRight) return zLeft;
  return HeightLine({{left, zLeft}, {right, zRight}}).heightAt(u, Beside::Right);
}

}  // namespace

bool SheetMetal::contains(Length u, Length z) const {
  bool inside = false, on = false;
  const FaceVertex p{u, z};
  eachEdge(*shape, [&](const FaceVertex& a, const FaceVertex& b) {
    const Int128 side = turn(offset(a, b), offset(a, p));
    const bool between =
        std::min(a.u, b.u) <= u && u <= std::max(a.u, b.u) && std::min(a.z, b.z) <= z && z <= std::max(a.z, b.z);
    if (side == 0 && between) on = true;
    const bool crosses = (a.z <= z) != (b.z <= z);
    if (crosses && (side > 0) == (b.z > a.z)) inside = !inside;
  });
  return inside && !on;
}

bool SheetMetal::isNearEdge(Length u, Length z, Length r) const {
  bool near = false;
  eachEdge(*shape, [&](const FaceVertex& a, const FaceVertex& b) { near = near || isNear(a, b, {u, z}, r); });
  return near;
}

SheetMetal sheetMetal(const WallLayout& layout, std::int32_t piece) {
  SheetMetal metal;
  metal.piece = piece;
  metal.shape = &layout.pieces[static_cast<std::size_t>(piece)];
  metal.module = metal.shape->module;
  metal.hangOrder = metal.shape->hangOrder;
  if (!hasOneCellAColumn(*metal.shape)) return metal;
  metal.innerLow = metal.shape->bottom;
  metal.innerHigh = metal.shape->top;
  for (const Cell& cell : metal.shape->cells) {
    metal.innerLow = std::max({metal.innerLow, cell.bottomLeft, cell.bottomRight});
    metal.innerHigh = std::min({metal.innerHigh, cell.topLeft, cell.topRight});
  }
  return metal;
}

Standing standingOf(const SheetMetal& metal, Length u, Length z, Length r) {
  const Piece& piece = *metal.shape;
  if (u <= piece.left - r || u >= piece.right + r || z <= piece.bottom - r || z >= piece.top + r) return {};
  const bool wellIn =
      u >= piece.left + r && u <= piece.right - r && z >= metal.innerLow + r && z <= metal.innerHigh - r;
  if (wellIn) return {true, false};
  return {metal.contains(u, z), metal.isNearEdge(u, z, r)};
}

void appendUprights(const Piece& piece, Length u, bool rightward, std::vector<Upright>& uprights) {
  for (const Cell& cell : piece.cells) {
    const bool here = rightward ? cell.left <= u && u < cell.right : cell.left < u && u <= cell.right;
    if (!here) continue;
    uprights.push_back({heightAt(cell.left, cell.bottomLeft, cell.right, cell.bottomRight, u),
                        heightAt(cell.left, cell.topLeft, cell.right, cell.topRight, u)});
  }
}

std::vector<Upright> joined(std::vector<Upright> uprights) {
  std::sort(uprights.begin(), uprights.end(), [](const Upright& a, const Upright& b) { return a.low < b.low; });
  std::vector<Upright> all;
  for (const Upright& upright : uprights) {
    if (!all.empty() && upright.low <= all.back().high) {
      all.back().high = std::max(all.back().high, upright.high);
    } else {
      all.push_back(upright);
    }
  }
  return all;
}

std::vector<Upright> common(const std::vector<Upright>& a, const std::vector<Upright>& b) {
  std::vector<Upright> all;
  for (const Upright& one : a) {
    for (const Upright& other : b) {
      const Upright both{std::max(one.low, other.low), std::min(one.high, other.high)};
      if (both.low < both.high) all.push_back(both);
    }
  }
  return all;
}

}  // namespace ribwright
