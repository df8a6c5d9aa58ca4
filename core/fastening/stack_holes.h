// The holes of each piece that are drilled in the stack, before the sheet hangs, and where each of them may be.
#pragma once

#include <optional>
#include <vector>

#include "core/fastening/drill_batches.h"
#include "core/fastening/measured_faces.h"

namespace ribwright {

struct StackHole {
  RowKey key;
  Length offset;      // from the piece's starting metal edge
  std::int32_t hole;  // index into WallHoles::holes
  Length planned;     // s by the plans: from the piece's lowest end
  Length low, high;   // s at which it holds on its face, 1.5 d + drift taken off; steel upright in its way: no limit
  Length twiceOff;    // twice what the row stands above its face's middle by the plans; a girt's stands in it
  bool known = true;  // the face is known: a cross-section is stated
  bool surveyed = false;
};

// No limit: the hole is on steel that runs upright past it.
inline constexpr Length noLimit = Length::millimetres(50'000'000);

struct PieceHoles {
  std::vector<StackHole> stack;  // by key, then offset
  std::vector<std::int32_t>
      inPlace;  // indices into WallHoles::holes: through this piece, drilled where it hangs, rising
};

// Of the twins of one screw the upper sheet is drilled, and with ScrewPattern::LapHoles::BothSheets the others too. An
// eave row whose purlin is not measured is drilled in place. Parallel to WallLayout::pieces; `faces` of the same wall.
std::vector<PieceHoles> pieceHoles(const Job& job, const WallLayout& layout, const WallHoles& holes,
                                   const MeasuredFaces& faces);

// The pattern of a run was stated to have holes in both sheets of a lap.
bool drillsBothSheets(const Job& job, const WallHoles& holes, std::int32_t run);

}  // namespace ribwright
