// How the order is packed: bundles of one wall and one class of sheets, as they are hung.
//
// A bundle lies with the sheet that is hung first on top. A wall's sheets of one class are taken in hanging order; long
// and short ones lie apart where Settings::bundles has it so, so that short sheets over doors do not part the long
// ones. Each goes into the bundle begun last that holds it; where none does a bundle is begun, and those of its lengths
// are closed. A sheet that passes the weight limit by itself is a bundle of its own. A sheet that
// several pieces come from goes with the wall of the piece that is hung first. Spares are packed apart, class by class,
// longest at the bottom, and are set down at no wall.
#pragma once

#include <string>
#include <vector>

#include "core/takeoff/sheet_order.h"

namespace ribwright {

struct BundledSheet {
  int line = 0;   // index into SheetOrder::lines
  int sheet = 0;  // index into SheetOrder::sheets; -1: a spare
  bool operator==(const BundledSheet&) const = default;
};

struct Bundle {
  std::string name;  // "A-1", "A-2" ... by wall; of spares "spare-1" ...
  std::string wall;  // letter; empty: spares
  SheetClass sheet;
  std::vector<BundledSheet> sheets;  // from the top
  double kilograms = 0;              // 0 for translucent sheets
  Length longest, shortest;
  // u on the wall between which its sheets are hung: set down on the ground before it. Both 0 for spares.
  Length setDownFrom, setDownTo;
};

// Every sheet of the order in exactly one bundle; walls in the order of `layouts`, then spares.
std::vector<Bundle> bundlesOf(const Job& job, const std::vector<const WallLayout*>& layouts, const SheetOrder& order);

}  // namespace ribwright
