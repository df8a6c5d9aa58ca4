// The steel of one wall that sheets are screwed to: screw faces and the rows of holes on them, as the plans state them.
//
// Heights are z, places along the wall u. A screw face is the usable flat of the steel, less the bends at heel and lip.
// A hole holds on it at least 1.5 d + drift inside (AISI S100-16 for 1.5 d; drift: Settings::drift).
//
//   base angle    its leg stands on the concrete (base form on-wall: on that wall's top), heel below: face
//                 [foot + bend, foot + face], row EdgeSupport::row above the foot
//   eave purlin,  under the steel line, heel at the top: face [line - face, line - bend], row EdgeSupport::row below
//   the rake angle    line; eave where the line is level, rake where it slopes. All measured upright, as hold-downs are
//   girt          core/layout/girt_row.h; row in the middle of its face. Where faces of several girts overlap over one
//                 part of the wall they are nested: one row there, in the middle of what they have in common
//   column        with flush girts its outer flange stands in the way of each girt, and takes that row's holes
//   head, sill    flange above the head's and below the sill's steel, heel at the opening; from jamb to jamb; row in
//   the
//                 middle of the face
//   jamb          flange beside the jamb's steel, heel at the opening; from floor or sill to head. It stands in the way
//                 of a girt whose row lies between sill and head, and takes that row's holes; the girt stops there
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// One piece of steel in a row's way.
struct Stretch {
  enum class Steel { Own, Column, LeftJamb, RightJamb };
  Length from, to;                            // u
  bool endsAtFrom = false, endsAtTo = false;  // the steel ends there, within the wall: holes keep away from it too
  Steel steel = Steel::Own;
  std::string
      name;  // ids of its girts ("g1", "g1+g2"), number of the column, id of the opening; empty: base, eave, rake
  Length low, high;   // own steel: z of the screw face (along the top: from the steel line, negative); else u of it
  Length row;         // z of the holes (along the top: from the steel line, negative)
  bool known = true;  // false: no cross-section is stated, the face is not known
  // Indices into Wall::girts: the girts that it is made of; of a flange those in whose way it stands.
  std::vector<std::int32_t> girts;
  bool operator==(const Stretch&) const = default;
};

struct SupportRow {
  SupportKind kind = SupportKind::Girt;  // Base, Girt, Eave, Rake, Head or Sill
  std::string id;                        // of the girt (the first of nested ones) or opening; empty: base, eave, rake
  bool alongTop = false;                 // its heights are measured from the steel line
  std::vector<Stretch> stretches;        // by u, none over another
  bool operator==(const SupportRow&) const = default;
};

struct JambFlange {
  std::string opening;
  bool left = true;
  Length edge;        // u of the jamb's steel
  Length from, to;    // u of the flange
  Length low, high;   // u of its screw face
  Length foot, head;  // z from which to which it stands
  bool operator==(const JambFlange&) const = default;
};

struct WallSupports {
  std::vector<SupportRow> rows;   // base; eave and rake; girts from the lowest; heads and sills, opening by opening
  std::vector<JambFlange> jambs;  // opening by opening, left before right
  bool operator==(const WallSupports&) const = default;
};

WallSupports supportsOf(const Job& job, const Wall& wall, const WallLayout& layout);

}  // namespace ribwright
