// Where the steel goes that is bought, exactly:
//   bought = pieces + cut-outs + drops + waste + spares
// All are areas of metal width x length, in half square nanometres.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/takeoff/sheet_order.h"

namespace ribwright {

struct SteelAccount {
  Area bought;   // metal width x length of all sheets
  Area pieces;   // what hangs on the wall, laps and all: the area of their cells
  Area cutOuts;  // what openings and penetrations take out of a piece (see cutOutsOf)
  Area drops;    // kept of sheets' ends, full width, at least Settings::leastDrop long, a kerf away from what is used
  Area spares;   // whole sheets beside those to be hung
  Area waste;    // what is left: ends, sides of rips, wedges under a rake, kerfs
  double wasteKilograms = 0;  // 0 for translucent sheets
  bool operator==(const SteelAccount&) const = default;
  SteelAccount& operator+=(const SteelAccount& other);
};

// What openings take out of a piece: in each column of it all between its cells; below its lowest cell, where an
// opening's or penetration's edge ends the metal there, down to the highest of that opening's lower edge, the wall's
// bottom and the piece's lowest end; above its highest cell likewise upward.
Area cutOutsOf(const WallLayout& layout, const Piece& piece);

// What comes out of a sheet: several pieces have no kind in common.
enum class AccountKind { Full, Rip, Rake, Notched, Above, Below, Mixed, Shared, Spare };

// A sheet counts whole with the wall of its piece that is hung first; spares count with no wall (key "").
struct OrderAccount {
  SteelAccount total;
  std::vector<SteelAccount> lines;  // parallel to SheetOrder::lines
  std::map<SheetClass, SteelAccount> classes;
  std::map<std::string, SteelAccount> walls;  // by letter
  std::map<AccountKind, SteelAccount> kinds;
};

// `order` made of these layouts.
OrderAccount orderAccount(const SheetOrder& order, const std::vector<const WallLayout*>& layouts);

}  // namespace ribwright
