// Trim: strips bent to a section that close a wall's edges and openings, and the rules by which they are counted. Both
// are data: what a job uses stands in the job.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/profile.h"
#include "core/units/length.h"

namespace ribwright {

struct Trim {
  std::string id;                     // named by its dimensions: "jamb-4x1.5"
  std::string name;                   // what people read
  Length girth;                       // width of the flat strip that it is bent from
  std::vector<SectionPoint> section;  // as seen along it, for drawings; may be empty
  Length thickness;                   // base steel
  std::string colour;
  std::vector<Length> stocked;           // lengths that are sold: 10 ft and more, common practice
  Length spliceLap = Length::inches(2);  // the upper over the lower; common practice
  Length endTrim;                        // lost at the ends of each stocked length, both together
  bool operator==(const Trim&) const = default;
};

// What is trimmed with what: length = size x times / parts + allowance. Only sheeted walls are trimmed. The size
// follows from `where`:
//   Head            width of the opening, outside to outside of its jamb trims; where sheets hang above it
//   Sill            the same; where sheets hang below it: not where the opening reaches the floor
//   Jamb            height of the opening from its sill (where it reaches the floor: from the sheets' bottom beside it)
//                   to its head, no farther than sheets hang beside it; two an opening
//   HeaderCover     width of the opening, steel to steel
//   JambCover       height of the opening's steel; where it reaches the floor from the concrete; two an opening
//   OutsideCorner   height of the corner, from the lower of both sheet bottoms to the lower of both tops; where one
//   wall
//                   alone is sheeted, its own
//   InsideCorner    the same
//   Rake, Eave      each sloped, each level stretch of the top, along its slope (to the next whole nanometre)
//   Base            each level stretch of the bottom, less openings steel to steel; of bases with a trim, or on a wall
//   Transition      each lower limit of an upper band, as far as sheets hang below and above, less openings
// At each place the rules with the narrowest `of` hold: windows before all but doors before any opening. Several
// equally narrow ones all hold, each a piece of its own.
struct TrimRule {
  enum class Where {
    Head,
    Jamb,
    Sill,
    HeaderCover,
    JambCover,
    OutsideCorner,
    InsideCorner,
    Rake,
    Eave,
    Base,
    Transition,
  };
  enum class Of { AnyOpening, Doors, NotDoors, WalkDoors, OverheadDoors, SlidingDoors, Windows, Louvres, Framed };
  enum class Laps { Over, Under, Butts };
  std::string id;  // "window head"
  Where where = Where::Head;
  Of of = Of::AnyOpening;  // with what stands at openings
  std::string trim;        // a Trim's id; empty: not chosen yet, and no piece
  std::string colour;      // other than the trim's own; empty: the trim's
  int times = 1, parts = 1;
  Length allowance;  // may be negative
  Length lip;        // of each end, slit and folded: 1 in at window heads, common practice; part of the allowance
  Laps laps = Laps::Butts;  // its ends over or under what it meets: set what lies under first, so that water runs out
  bool operator==(const TrimRule&) const = default;
};

}  // namespace ribwright
