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
  std::string colour;
  bool translucent = false;
  Length thickness;
  Length length;
  std::vector<std::string> marks;  // one a sheet, in hanging order
  Area coverArea;                  // cover x length x quantity
  double kilograms = 0;            // developed width x base thickness x 7850 kg/m3 + coating, all sheets of the line
  int quantity() const { return static_cast<int>(marks.size()); }
};

struct SheetOrder {
  std::vector<OrderLine> lines;
  // Order code of each piece, parallel to layouts[i].pieces[j]: line number, and a letter for each different shape cut from it.
  std::vector<std::vector<std::string>> codes;
};

SheetOrder sheetOrder(const Job& job, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
