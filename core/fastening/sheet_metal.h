// One piece's metal on the wall face: whether a hole lies in it, and how near to an edge.
//
// Exact: distances to upright and level edges are whole nanometres, to slopes compared as squares through 128 bits.
#pragma once

#include <optional>
#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright {

struct SheetMetal {
  std::int32_t piece = -1;  // index into WallLayout::pieces
  std::int32_t module = -1;
  int hangOrder = 0;
  const Piece* shape = nullptr;
  // A rectangle over the piece's whole width that is metal throughout; none when innerLow >= innerHigh.
  Length innerLow, innerHigh;

  bool contains(Length u, Length z) const;              // strictly inside its outline
  bool isNearEdge(Length u, Length z, Length r) const;  // nearer than r to its outline
};

SheetMetal sheetMetal(const WallLayout& layout, std::int32_t piece);

// What a point is to a piece.
struct Standing {
  bool inside = false, nearEdge = false;
};
// The same as contains and isNearEdge, quick where the point lies well in or well out.
Standing standingOf(const SheetMetal& metal, Length u, Length z, Length r);

// Heights between which the piece has metal just to the right (rightward) or left of u, rising; parts that touch are
// one.
struct Upright {
  Length low, high;
  bool operator==(const Upright&) const = default;
};
void appendUprights(const Piece& piece, Length u, bool rightward, std::vector<Upright>& uprights);
// Sorted, joined where they touch or overlap.
std::vector<Upright> joined(std::vector<Upright> uprights);
// What two such lists have in common.
std::vector<Upright> common(const std::vector<Upright>& a, const std::vector<Upright>& b);

}  // namespace ribwright
