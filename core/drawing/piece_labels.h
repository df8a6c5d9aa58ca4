// Marks and blank lengths on the sheets of an elevation.
#pragma once

#include <vector>

#include "core/drawing/callout.h"
#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// Writes mark and blank length into every piece that has room: level, or reading upward, or the mark alone. Gives back
// callouts for the pieces that have none; where those are too many for a page, for some of them, and adds the number of
// the others to `leftOut`.
std::vector<Callout> drawPieceLabels(Sketch& sketch, const WallView& view, int& leftOut);

// Width on paper of the narrowest sheet that holds a label.
double narrowestNamed();

// The columns of what is seen of a piece.
std::vector<Column> seenColumns(const WallView& view, const Piece& piece);

}  // namespace ribwright
