// The cut shape of a piece, so that equal pieces can be told.
#pragma once

#include <compare>
#include <cstdint>
#include <vector>

#include "core/layout/wall_layout.h"

namespace ribwright {

// The outline of a piece as its sheet lies face up with the lip to the left: x from the sheet's module line, y upward.
// A wall hung left to right shows its sheets so; one hung right to left shows them turned end for end. So equal shapes
// are equal sheets, either of which serves for the other. Measured from the module line and not from the piece's own
// edge, a start rip and an end rip of one width differ, as they do on the wall: one keeps the leg, the other the lip.
struct CutShape {
  std::vector<std::int64_t> figures;  // for each ring: its number of corners, then x and y of each in nanometres
  auto operator<=>(const CutShape&) const = default;
};

CutShape cutShape(const Piece& piece, const Module& module, Hand hand);

// Nothing is cut: a whole sheet, as long as it is bought.
bool isUncut(const Piece& piece, Length bought);

}  // namespace ribwright
