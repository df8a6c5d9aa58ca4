// A table on paper that flows in blocks: down one block, then on in the next beside it, then on the next page. Unit:
// mm.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/sketch.h"

namespace ribwright {

struct PaperTable {
  std::string title;
  std::vector<std::string> headings;
  std::vector<std::vector<std::string>> rows;  // each as long as `headings`
  std::vector<bool> figures;                   // per column: figures stand at the right
};

// Height that all rows from `first` on take when `width` is filled with blocks; 0 for no rows.
double heightOf(const PaperTable& table, double width, int first = 0);

// Draws rows from `first` on into the room, in blocks as low as will hold them. Gives the first row that found no room;
// that is `first` itself when the room is too small for any.
int drawTable(Sketch& sketch, const PaperTable& table, const Box& room, int first = 0);

}  // namespace ribwright
