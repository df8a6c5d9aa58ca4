// What lies at a place of the board: what stands in front is found first.
#pragma once

#include <optional>

#include "core/drawing/board_picture.h"

namespace ribwright {

// Millimetres on the face, y down; `reach` how far off a screw or line may be; `zoom` tells which screws are seen. In
// turn: the nearest screw, penetrations, openings, the nearest girt, the nearest column, sheets. Nothing outside.
std::optional<Part> partAt(const BoardPicture& picture, const PaperPoint& place, double reach, double zoom);

// Even-odd.
bool isInside(const std::vector<std::vector<PaperPoint>>& rings, const PaperPoint& place);

}  // namespace ribwright
