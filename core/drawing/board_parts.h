// What a board's picture is put together from; each adds its layers and things. `view` is the whole wall at full size.
#pragma once

#include <vector>

#include "core/drawing/board_picture.h"
#include "core/drawing/label_block.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

void addSheets(BoardPicture& picture, const WallView& view);
void addRibs(BoardPicture& picture, const WallView& view);
void addOpenings(BoardPicture& picture, const WallView& view);
void addGirts(BoardPicture& picture, const WallView& view);
// Girts and eave purlin as measured.
void addMeasured(BoardPicture& picture, const WallView& view);
void addColumns(BoardPicture& picture, const WallView& view);
void addFace(BoardPicture& picture, const WallView& view);
void addScrews(BoardPicture& picture, const WallView& view);
// Last: names go to the things that are there.
void addLabels(BoardPicture& picture, const WallView& view);

// y of the upright stretches at x that lie in the columns: upper and lower end, from the top; those that meet are one.
struct Upright {
  double top, bottom;
};
std::vector<Upright> uprightsAt(const std::vector<Column>& columns, double x);

// Adds to the extent of a thing what its rings reach.
Box boxRound(const std::vector<std::vector<PaperPoint>>& rings);

}  // namespace ribwright
