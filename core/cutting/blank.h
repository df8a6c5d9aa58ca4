// A blank: one sheet as it is bought, before it is cut, and the pieces that come out of it.
//
// A blank lies face up with its lip (starting edge) to the left. x runs across it from the sheet's module line (-over
// at the lip's edge, cover + under at the leg's), y up from its lower end. A wall hung left to right hangs its sheets
// as they lie so; one hung right to left hangs them turned end for end.
#pragma once

#include <vector>

#include "core/cutting/sheet_class.h"
#include "core/units/length.h"

namespace ribwright {

// A piece of a plan: indices into the layouts, and into WallLayout::pieces.
struct PieceRef {
  int wall = 0, piece = 0;
  auto operator<=>(const PieceRef&) const = default;
};

struct BlankPart {
  PieceRef piece;
  // Turned end for end in its plane, other than its wall's sheets lie in a blank: its lip is where their leg is.
  bool turned = false;
  // Its lower end lies toward the blank's upper end. Not turned, that is so for the pieces of walls hung right to left.
  bool upsideDown = false;
  Length left, right;  // x of its metal in the blank
  // y of the room it takes, rectangle to rectangle; of a rake pair the rooms overlap. Its lower end lies on `from`, or
  // upside down on `to`; an allowance at the other.
  Length from, to;
  bool operator==(const BlankPart&) const = default;
};

struct Blank {
  enum class Way {
    Alone,
    RakePair,  // along one sloped cut
    RipPair,   // side by side
    Drop,      // a short piece beyond a longer one
    Gang,      // short pieces end to end
  };
  Way way = Way::Alone;
  SheetClass sheet;
  Length length;  // that it must measure at least, allowance and kerfs within; not yet a length made
  // So much less is bought than for its parts alone, by the lengths made (see bought_length.h).
  Length saved;
  std::vector<BlankPart> parts;  // the longest first, then by mark
  bool operator==(const Blank&) const = default;
};

}  // namespace ribwright
