// Where to cut a blank, and which part goes where: what drawings and words of it are made from.
//
// x and y as in blank.h, face up. Parts that hang from the blank's upper end go with it when the sheet is bought longer
// than it must be, so that a lower end that can be a factory end is one.
#pragma once

#include <vector>

#include "core/cutting/blank.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct BlankPoint {
  Length x, y;
  bool operator==(const BlankPoint&) const = default;
};

// A straight cut. The metal of `part` ends on it, and the kerf lies on its other side.
struct BlankCut {
  enum class Along {
    Slope,       // the top edge of a part of a rake pair
    Lengthwise,  // a part's side; from is below to
    Across,      // a part's end, or the end of its room where its top is trimmed in place; from is left of to
  };
  Along along = Along::Across;
  int part = 0;         // index into Blank::parts
  BlankPoint from, to;  // of a slope: from is left of to
  bool operator==(const BlankCut&) const = default;
};

struct PlacedPart {
  BlankPart part;                              // its room in the sheet as it is bought
  std::vector<std::vector<BlankPoint>> rings;  // of the piece, clockwise face up: first the outer one, then inner ones
};

struct BlankCuts {
  Length left, right;             // x of the blank's edges: lip and leg
  Length length;                  // as bought
  std::vector<PlacedPart> parts;  // as Blank::parts
  std::vector<BlankCut> cuts;     // by part; those that part it from the blank, not those within its room
};

// `bought` >= blank.length. Throws std::invalid_argument where it is shorter, or the blank's profile is not in the job;
// std::out_of_range where a part is not in the layouts.
BlankCuts blankCuts(const Job& job, const std::vector<const WallLayout*>& layouts, const Blank& blank, Length bought);

}  // namespace ribwright
