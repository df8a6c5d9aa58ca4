// How sheets are bought: what may come out of one blank, spares, bundles, and what steel costs.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

// Which pieces may share a blank, so that less steel is bought. A blank shared is a blank cut: `Off` ships.
struct Sharing {
  enum class Reach {
    Off,
    On,       // pieces of all walls, with each other
    PerWall,  // pieces of those walls that say so (Wall::shares), with each other
  };
  Reach reach = Reach::Off;
  bool rakePairs = true;  // two pieces under a rake, one turned, along one sloped cut
  bool ripPairs = true;   // a start rip and an end rip, side by side
  bool drops = true;      // a short piece beyond a longer one, end to end
  bool gangs = true;      // short pieces end to end, up to the shortest length made
  bool operator==(const Sharing&) const = default;
};

// Of each line of the order whichever gives more; 0 and 0: none.
struct Spares {
  int percent = 0;  // of its sheets, up to the next whole one
  int fewest = 0;   // sheets
  bool operator==(const Spares&) const = default;
};

// Limits of one bundle, common practice.
struct Bundles {
  int heaviestKilograms = 1000;
  int mostSheets = 40;
  Length lengthSpread = Length::feet(10);  // its longest sheet is longer than its shortest by no more than this
  bool operator==(const Bundles&) const = default;
};

// What the user pays for something, as a supplier told it.
struct Price {
  enum class What {
    Sheet,   // `item` is a profile's id
    Trim,    // `item` is a trim's id
    Cut,     // each cut that parts a blank or a stock length; `item` is not used
    Charge,  // once an order: delivery, a crate; `item` says what
  };
  enum class Per { Each, Foot, Metre, SquareFoot, SquareMetre, Pound, Kilogram };
  What what = What::Sheet;
  std::string item;
  std::string colour;               // empty: of every colour that no other price names; "translucent": such sheets
  std::optional<Length> thickness;  // absent: of every thickness that no other price names
  Per per = Per::Foot;              // of a cut or a charge: not used, each
  int cents = 0;                    // whole hundredths of the currency, >= 0
  bool operator==(const Price&) const = default;
};

struct Prices {
  std::string currency;      // as it is written beside a sum: "USD"; may be empty
  std::string source, date;  // who told them, and when
  std::vector<Price> items;
  bool operator==(const Prices&) const = default;
};

}  // namespace ribwright
