// From the cells of a run's sheets to pieces: what hangs together, its extents, its kind and its blank.
#pragma once

#include <vector>

#include "core/layout/hanging_frame.h"
#include "core/layout/run_cells.h"

namespace ribwright {

struct BlankRules {
  Length increment;  // lengths made
  Length allowance;  // added to a piece whose top is on the rake, when it is trimmed in place
};

// Pieces of one sheet, in the wall face, sorted from the bottom, then from the starting side. Mark, run and hang order
// are left to the caller.
std::vector<Piece> piecesOf(const SheetCells& sheet, const RunModule& module, const HangingFrame& frame,
                            const BlankRules& rules);

PieceKind kindOf(const Piece& piece);

// The slabs of the last piece, in hanging order, that adds no uncovered face: other sheets cover all of it. Empty when
// there is none. Of a sheet that hangs already the last piece stays.
std::vector<NotHung> needlessPiece(const std::vector<SheetCells>& sheets, const std::vector<RunModule>& modules);

}  // namespace ribwright
