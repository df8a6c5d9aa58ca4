// What was measured on the steel that was really built, and what has been hung, ordered and received: facts from site.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

// Height above the chalk line of the edge that the girt is typed by, at one station. With `within` it is a stick check:
// the height lies anywhere in height +- within, and all of it must hold.
struct GirtReading {
  Length u;
  Length height;
  std::optional<Length> within;
  std::string by, date;
  bool operator==(const GirtReading&) const = default;
};

struct GirtSurvey {
  std::string girt;                   // a Girt's id
  std::vector<GirtReading> readings;  // stations, u rising
  bool operator==(const GirtSurvey&) const = default;
};

struct SlabReading {
  Length u;
  Length z;  // of the slab edge, from the datum; down is negative
  bool operator==(const SlabReading&) const = default;
};

struct WallSurvey {
  bool propsInPlace = false;
  std::optional<Length> chalkLine;  // z at which the chalk line was snapped; absent: at the sheet's bottom
  std::vector<GirtSurvey> girts;
  std::vector<SlabReading> slab;
  std::optional<Length> diagonalRising;   // bottom left to top right
  std::optional<Length> diagonalFalling;  // top left to bottom right
  bool operator==(const WallSurvey&) const = default;
};

// A sheet that hangs. Its measured leading edge is where the run goes on from.
struct HungSheet {
  std::string mark;    // position mark without a part: "B7"
  Length leadingEdge;  // u of its leading metal edge
  std::string by, date;
  bool operator==(const HungSheet&) const = default;
};

struct SheetLot {
  std::string profile, colour;
  Length thickness;
  Length length;
  int quantity = 0;
  std::vector<std::string> marks;
  bool translucent = false;  // then it has no colour
  bool operator==(const SheetLot&) const = default;
};

// received: what came fit to hang. shortfall: what came unfit, or will not come. A sheet is counted in one of them, or
// is still to come.
struct PlacedOrder {
  std::string id, date;
  std::vector<SheetLot> placed, received, shortfall;
  bool operator==(const PlacedOrder&) const = default;
};

struct SiteFacts {
  std::vector<HungSheet> hung;
  std::vector<PlacedOrder> orders;
  bool operator==(const SiteFacts&) const = default;
};

}  // namespace ribwright
