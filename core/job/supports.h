// The steel that sheets are screwed to, as the plans state it. Heights are z, from the top of concrete at the slab
// edge; places along a wall are u, from its left corner seen from outside.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

// The cross-section of a girt, purlin or column flange.
struct Member {
  enum class Shape { Zed, Cee, Angle, Hat, WideFlange };
  std::string id;  // "Z8x2.5x0.068": its dimensions
  Shape shape = Shape::Zed;
  Length depth;   // web, outside to outside
  Length flange;  // outer flange, outside width
  Length lip;     // stiffening lip at the flange's free edge; 0 when there is none
  Length thickness;
  Length bendRadius;  // inside
  bool operator==(const Member&) const = default;
};

struct Girt {
  enum class TypedBy { WebLine, Bottom, Top, Centre };
  enum class Flange { Up, Down };  // which way the outer flange turns from the web
  std::string id;                  // "g1"
  Length height;                   // z of the edge or line that it is typed by
  TypedBy typedBy = TypedBy::Centre;
  Flange flange = Flange::Down;
  std::string member;              // a Member's id; empty: not stated, the row is the typed height
  std::optional<Length> from;      // u; absent: from the left corner
  std::optional<Length> to;        // u; absent: to the right corner
  std::optional<Length> clipSlot;  // how far the clip lets it be raised or lowered
  bool operator==(const Girt&) const = default;
};

// Base angle, eave purlin and rake angle: an upright screw face along an edge of the wall.
struct EdgeSupport {
  Length face = Length::inches(2);  // height of the leg that bears on the sheet
  Length bend = Length();           // lost at the heel
  Length row = Length::inches(1);   // base: from the face's bottom; eave and rake: from its top
  std::string member;               // a Member's id; may be empty
  bool operator==(const EdgeSupport&) const = default;
};

struct ColumnGrid {
  Length offset;             // from the wall's left corner (sheeting line) to column 1; may be negative
  std::vector<Length> bays;  // column 1 to 2, 2 to 3 ...
  std::string member;
  Length flange;  // width of the outer flange, for flush girts (upright support); 0: not stated
  bool operator==(const ColumnGrid&) const = default;
};

enum class GirtSetting { Bypass, Flush };  // past the columns, or between them

}  // namespace ribwright
