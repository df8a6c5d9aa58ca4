// What a person states to begin a job: one building, or one free wall, in the order in which plans are read.
//
// Lengths are texts as they were typed (core/units/length_text.h), so that what cannot be read stays, and a fault
// stands at its field. Places are seen from outside; wall A is the front, along the building's length.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"
#include "core/words/words.h"

namespace ribwright {

struct NewJob {
  enum class Shape { Rectangle, FreeWall };
  enum class Side { Nowhere, A, B, C, D };
  enum class Wind { NotStated, North, NorthEast, East, SouthEast, South, SouthWest, West, NorthWest };

  std::string name, number;
  UnitSystem units = UnitSystem::FeetInches;
  bool decimalComma = false;

  Shape shape = Shape::Rectangle;
  std::string length;  // along wall A, between the sheeting lines of its corners; of a free wall its width
  std::string width;   // of a rectangle

  Roof::Kind roof = Roof::Kind::Gable;  // None: as Level
  std::string eave;                     // of the lower side of a single slope; of a free wall at its left corner
  // A slope ("4:12", "150 in 250", "9.5 deg"), or a height: of the ridge, or of a single slope's higher side.
  std::string slope;
  Roof::Ends ends = Roof::Ends::BD;

  // Strings of bays from the left corner, seen from outside. Those that do not fill a wall stand in its middle.
  std::string sideBays, endBays;
  // Heights from the top of concrete, rising. Blank for the ends: those of the sides, and on upward at their last
  // spacing for as long as the rake stands above.
  std::string sideGirts, endGirts;
  std::string member;  // id of one of ordinaryMembers(); empty: not stated
  Girt::TypedBy typedBy = Girt::TypedBy::Centre;
  GirtSetting girtSetting = GirtSetting::Bypass;

  Base::Form base = Base::Form::Overhang;
  std::string baseHeight;  // drop, depth of the notch's ledge, or height of the shelf or wall, as the form has it

  std::string profile;  // id of a shipped one; empty: none chosen yet
  std::string pattern;  // id of a shipped one, for that profile; empty: none stated yet
  std::string colour;

  Side seenFrom = Side::A;      // what passes by stands before this wall ...
  std::string seenAt;           // ... at this distance from its middle
  Wind wind = Wind::NotStated;  // blows from here in the plan; wall A looks south
  bool operator==(const NewJob&) const = default;
};

// The job that follows. Faults: place is the field's key in its file ("side_girts"), every one at once. Names of walls
// and of what passes by are said in `words`.
Outcome<Job> jobOf(const NewJob& stated, const Words& words);

}  // namespace ribwright
