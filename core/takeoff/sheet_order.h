// What to order: the pieces of all walls as blanks, the blanks as sheets of lengths that are sold, the sheets as lines.
//
// Lengths made are whole steps of the profile's increment, none shorter than its shortest. Each blank is ordered at the
// least of them that is long enough; where Settings::mostOrderLengths limits how many lengths a class has, at one of
// those that length_tradeoff.h chooses. One longer than the longest is ordered as it is and counts toward no limit: it
// has its finding. Lengths off the shelf (SheetLengths::stocked): blanks are cut from them end to end, a kerf between
// two, by the stock cutter, whatever the limit; one longer than all of them is ordered as it is.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/blank.h"
#include "core/cutting/cutting_list.h"
#include "core/cutting/cutting_plan.h"
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
  Length length;  // as it is bought
  // One a sheet to be hung, in hanging order of its first part; several pieces out of one sheet are joined: "B3+C5".
  std::vector<std::string> marks;
  int firstSheet = 0;  // its sheets are SheetOrder::sheets[firstSheet ...], parallel to marks
  int spares = 0;      // beside those to be hung (Settings::spares)
  Length metalWidth;   // lip to leg; all areas but coverArea are metal width x length
  Area coverArea;      // cover x length x quantity
  // Developed width x length x (base thickness x 7850 kg/m3 + coating), all sheets of the line; 0 for translucent
  // sheets, whose weight no profile states.
  double kilograms = 0;

  int hung() const { return static_cast<int>(marks.size()); }
  int quantity() const { return hung() + spares; }
  double kilogramsOfOne() const { return quantity() > 0 ? kilograms / quantity() : 0; }
  SheetClass sheet() const { return {profile, thickness, colour, translucent}; }
};

// One sheet to be hung, as it is bought; spares are not among them.
struct OrderedSheet {
  int line = 0;             // index into SheetOrder::lines
  PieceRef first;           // of its pieces the one hung first, walls in their order
  std::vector<int> blanks;  // indices into SheetOrder::blanks, from its lower end up; one, if it is not from the shelf
  Length used;              // its blanks and the kerfs between them
  Length drop;              // kept of its upper end, full width, beyond one kerf: 0 or at least Settings::leastDrop
};

// Where a blank is bought.
struct BlankPlace {
  int line = 0, sheet = 0;  // indices into lines and sheets
  Length from;              // of its lower end, from the sheet's
};

// How the blanks of one class were cut from the lengths on the shelf. List and plan are in nanometres, cost = length.
struct ShelfCut {
  SheetClass sheet;
  CuttingList list;
  CuttingPlan plan;  // with its proof, or its bound when the work limit was spent
};

struct SheetOrder {
  std::vector<OrderLine> lines;
  std::vector<OrderedSheet> sheets;  // by line, then as the line's marks
  std::vector<Blank> blanks;
  std::vector<BlankPlace> places;  // parallel to blanks
  std::vector<ShelfCut> shelfCuts;
  // The blank that each piece comes from, parallel to layouts[i].pieces[j].
  std::vector<std::vector<int>> blankOf;
  // Order code of each piece, parallel to that too: line number, and a letter (a ... z, aa ...) for each different
  // shape cut from it; a plain uncut sheet has the number alone. Letters follow the order of first appearance.
  std::vector<std::vector<std::string>> codes;

  Length bought(int blank) const {
    return lines[static_cast<std::size_t>(places[static_cast<std::size_t>(blank)].line)].length;
  }
};

// Blanks as shareBlanks gives them. Lines stand by profile, thickness, colour, steel before translucent, then the
// longest first; marks in hanging order over the walls in the given order. Throws std::invalid_argument when a layout's
// wall or a band's profile is not in the job, and std::out_of_range when a piece's run, module or band is not in its
// layout.
SheetOrder sheetOrder(const Job& job, const std::vector<const WallLayout*>& layouts);

// Of other blanks: every piece in exactly one of them, those of one class together. std::invalid_argument when not so.
SheetOrder sheetOrder(const Job& job, const std::vector<const WallLayout*>& layouts, std::vector<Blank> blanks);

}  // namespace ribwright
