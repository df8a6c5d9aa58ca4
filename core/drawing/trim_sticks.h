// A stock length of trim as it is cut: a bar to scale with its pieces, kerfs black, waste hatched, what is kept plain.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/page_flow.h"
#include "core/drawing/trim_flat.h"
#include "core/takeoff/trim_cuts.h"

namespace ribwright {

// Under the bar its cuts, each by a letter: what it is, its length, and where it ends as a tape reads from the end at
// the left. `longest` fills the width.
PageBlock stickPicture(const TrimTakeoff& takeoff, const TrimStick& stick, Length longest, const TrimWords& words,
                       const Box& work);

// "A eave (2 of 3)"
std::string partText(const TrimPiece& piece, int part, const TrimWords& words);

// "7 × 20' 2\" + 14' 0\"": the lengths of a spliced piece's parts; empty for one that is whole.
std::string partLengths(const TrimPiece& piece, const LengthStyle& style);

// a ... z, aa ...
std::string cutLetter(std::size_t index);

}  // namespace ribwright
