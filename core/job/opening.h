// Openings and penetrations as they are stated.
#pragma once

#include <optional>
#include <string>

#include "core/units/length.h"

namespace ribwright {

// A place along a wall stays as it was stated.
struct Anchor {
  enum class From { LeftCorner, RightCorner, Column };
  enum class To {
    NearJamb,
    Centre
  };  // NearJamb: left jamb when measured to the right, right jamb from the right corner
  From from = From::LeftCorner;
  int column = 0;   // 1, 2 ... with From::Column
  Length distance;  // to the right (from the right corner: to the left); from a column it may be negative
  To to = To::NearJamb;
  bool operator==(const Anchor&) const = default;
};

// How far the sheets stay back from the steel of the frame. Absent: the job's clearance for that side and kind.
struct Clearances {
  std::optional<Length> jamb, head, sill;
  bool operator==(const Clearances&) const = default;
};

// The steel of an opening's frame that takes screws: flanges that turn away from the opening, their heels at its edges.
struct FrameSteel {
  Length face = Length::inches(2, 32);  // width of the flange, where no member is stated
  Length bend;                          // lost at the heel, where no member is stated
  std::string member;                   // a Member's id; may be empty
  bool operator==(const FrameSteel&) const = default;
};

struct Opening {
  enum class Kind { WalkDoor, OverheadDoor, SlidingDoor, Window, Louvre, Framed };
  std::string id;  // "W1"
  Kind kind = Kind::Window;
  Anchor place;
  Length width, height;  // steel to steel of its frame, > 0
  Length sill;           // z of the sill's steel; at or below the concrete the opening reaches the floor
  Clearances clearances;
  Length jambTrim;  // width of the jamb trim seen from outside; 0: not stated
  FrameSteel frame{};
  bool operator==(const Opening&) const = default;
};

// A pipe, a beam, a flue: a small hole through the sheet.
struct Penetration {
  enum class Shape { Round, Rectangular };
  std::string id;  // "P1"
  Shape shape = Shape::Round;
  Anchor place;                              // to its centre (Anchor::To is not used)
  Length centre;                             // z of its centre
  Length width, height;                      // a round one: both are its diameter
  Length clearance = Length::inches(0, 32);  // all round, common practice
  bool operator==(const Penetration&) const = default;
};

}  // namespace ribwright
