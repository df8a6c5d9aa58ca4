// Names and sizes of openings and penetrations on an elevation.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/callout.h"
#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

// Writes into every opening what has room there: id, size and sill, or less. Gives back callouts for the rest.
std::vector<Callout> drawOpeningLabels(Sketch& sketch, const WallView& view);

// The upright-sided parts of what a cut region leaves open within the face.
std::vector<Column> openColumns(const WallView& view, const CutRegion& cut);

// 3' 0" × 4' 0", or ø 6" for a round penetration; of what is stated. Empty for an id that the wall has not.
std::string sizeWords(const WallView& view, const std::string& id);

// The opening stands on this drawing: its middle does. So each is named on one page only.
bool isNamedHere(const WallView& view, const CutRegion& cut);

}  // namespace ribwright
