// How far girts sag under their own weight between what holds them, before props are set and sheets hung.
//
// A girt stands with its web level, so that its weight bends it about its weak axis; what it bends against is
// inertiaUnderOwnWeight (free to move sideways), of the gross section. Nothing but its own weight counts: no sheets, no
// frames of openings, no one standing on it. Gross properties are an upper bound on stiffness (design uses effective
// ones), and clips that give and sections that twist about a shear centre off the web add to it: really it sags at
// least this much. Steel doubled where girts lap over a column, and parts that reach past the last hold, are left out.
//
// Held at: the columns that it reaches (core/fastening/girt_spans.h); and a jamb that stands on the floor, where it
// ends there. Bypass girts go on over the columns, through laps with others whose screw faces overlap theirs; flush
// ones end at each. Nothing is said of a part that ends at the jamb of a window, since that hangs on girts itself.
//
// Simple spans, two equal and the outer ones of three equal spans go by the handbook's formulas, so that anyone can
// work them out again; every other continuous girt by the three-moment equation (core/fastening/continuous_beam.h).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/fastening/member_properties.h"
#include "core/fastening/supports.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct GirtSag {
  enum class Taken : std::uint8_t { Simple, TwoEqual, ThreeEqual, Continuous };
  std::int32_t girt = -1;  // index into Wall::girts
  std::int32_t bay = 0;    // 1: between columns 1 and 2 ...; 0: one of its holds is a jamb
  Length from, to;         // u of its two holds
  Length at;               // u of the lowest place, to the nearest millimetre where it is not the middle
  Length sag;              // downward, never negative, to the nearest micrometre, and no more than the span
  Taken taken = Taken::Simple;
  std::int32_t spans = 1;  // of the continuous girt that the bay belongs to
  bool operator==(const GirtSag&) const = default;
};

// "5wL^4/384EI", "wL^4/185EI", ".0069wL^4/EI"; empty with the three-moment equation.
std::string_view formulaOf(GirtSag::Taken taken);
// The document that the formula and the modulus stand in.
std::string sagSource(GirtSag::Taken taken, ModulusBy by);

// Bay by bay, girts from the lowest row up, each from left to right. Left out: bays of a girt any part of whose
// continuous length has no stated member, or one whose bends do not fit it.
std::vector<GirtSag> girtSags(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports,
                              ModulusBy by = ModulusBy::American);

// From here on props are worth setting before measuring (common practice): 1/8 in; in jobs in millimetres 3 mm.
Length sagWorthProps(UnitSystem units);

}  // namespace ribwright
