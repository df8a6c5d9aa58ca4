// Legs beside openings: the narrow strip of one sheet between a straight jamb and its metal edge, where the neighbour's
// metal covers it wholly, is cut away with the opening.
//
// A cut edge that lies in a lap leaves such a strip on one of the two sheets. The earlier sheet's strip goes first; the
// later sheet's strip stays where it would meet a strip already taken from the earlier sheet, so that nothing is left
// bare.
#pragma once

#include <vector>

#include "core/layout/sheet_run.h"
#include "core/units/length.h"

namespace ribwright {

// A cut region in hanging coordinates, as far as legs are concerned.
struct StraightCut {
  int cut = 0;  // index into the wall's cuts
  Length from, to, bottom, top;
  bool reachesFloor = false;
};

struct LegStrip {
  int module = 0;  // index into the run's modules
  int cut = 0;
  Length from, to, bottom, top;
  bool reachesFloor = false;
};

// Sorted by module. Cuts sorted by `from`.
std::vector<LegStrip> legStrips(const std::vector<RunModule>& modules, const std::vector<StraightCut>& cuts);

}  // namespace ribwright
