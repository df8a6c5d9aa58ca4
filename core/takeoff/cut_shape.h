// The cut shape of a piece, so that equal pieces can be told.
#pragma once

#include <compare>
#include <cstdint>
#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright {

// The outline of a piece in its own sheet: x from the sheet's module line at the starting side toward the leading edge,
// y from the piece's lowest end, whichever hand the wall hangs. Measured from the module line and not from the piece's
// own edge, a start rip and an end rip of one width differ, as they do on the wall: one keeps the leg, the other the
// lip, and their ribs stand elsewhere. Two pieces of opposite hands with equal shapes are cut by the same figures from
// lip and lower end; lying face up they are each other's mirror image, so once cut one does not serve for the other.
struct CutShape {
  std::vector<std::int64_t> figures;  // for each ring: its number of corners, then x and y of each in nanometres
  auto operator<=>(const CutShape&) const = default;
};

CutShape cutShape(const Piece& piece, const Module& module, Hand hand);

// Nothing is cut: a whole sheet, as long as its blank.
bool isUncut(const Piece& piece);

}  // namespace ribwright
