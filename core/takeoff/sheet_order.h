// What to order: pieces gathered by profile, thickness, colour and length.
#pragma once

#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "core/units/area.h"

namespace ribwright {

struct OrderLine {
  int line = 0;  // 1, 2 ...
  std::string profile;
  std::string colour;  // empty for translucent sheets
  bool translucent = false;
  Length thickness;
  Length length;
  std::vector<std::string> marks;  // one a sheet, in hanging order
  Area coverArea;                  // cover x length x quantity
  // Developed width x length x (base thickness x 7850 kg/m3 + coating), all sheets of the line; 0 for translucent
  // sheets, whose weight no profile states.
  double kilograms = 0;
  int quantity() const { return static_cast<int>(marks.size()); }
};

struct SheetOrder {
  std::vector<OrderLine> lines;
  // Order code of each piece, parallel to layouts[i].pieces[j]: line number, and a letter (a ... z, aa ...) for each
  // different shape cut from it; a plain uncut sheet has the number alone. Letters follow the order of first
  // appearance.
  std::vector<std::vector<std::string>> codes;
};

// Lines stand by profile, thickness, colour, steel before translucent, then the longest first; marks in hanging order
// over the walls in the given order. Throws std::invalid_argument when a layout's wall or a band's profile is not in
// the job, and std::out_of_range when a piece's run, module or band is not in its layout.
SheetOrder sheetOrder(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
