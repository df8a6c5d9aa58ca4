// Where the steel of a wall really is: screw faces moved to what was measured on site.
//
// A reading is the height above the chalk line of the edge that the girt is typed by; between stations it is linear,
// beyond the first and the last nothing is known. A stick check is an interval, and all of it must hold: a measured
// face is what is steel whatever the true height in that interval is.
#pragma once

#include <optional>

#include "core/fastening/holes.h"

namespace ribwright {

// An upright stretch of steel that takes screws, less nothing: margins are the hole's. Empty when low > high.
struct MeasuredFace {
  Length low, high;       // z
  bool surveyed = false;  // false: as the plans state it
  bool operator==(const MeasuredFace&) const = default;
};

// z of the chalk line at u: where it was snapped, else the sheets' bottom by the plans (the lower one at a step).
Length chalkLineAt(const Wall& wall, const WallLayout& layout, Length u);

// How far a girt's typed edge may stand above (positive) its typed height at u.
struct GirtShift {
  Length least, most;
  bool operator==(const GirtShift&) const = default;
};
// Nothing where the girt was not measured on both sides of u. Each bound is rounded once, half to even, to the
// nanometre (HeightLine).
std::optional<GirtShift> girtShift(const Wall& wall, const WallLayout& layout, std::int32_t girt, Length u);

// Id under which the survey of a wall lists its eave purlin; its typed edge is the steel line.
inline constexpr std::string_view eaveSurveyId = "eave";

// The face that a hole of this row sits on at u. Girts: each of the stretch's girts moved by its own reading, and what
// they then have in common (none: not measured there). Base: the slab edge's reading where there is one on both sides,
// else the plans'. Eave: as a girt. Upright steel (jamb, column flange) has no height to be wrong by: from foot to
// head. Nothing: not measured, or no cross-section is stated.
std::optional<MeasuredFace> measuredFace(const Job& job, const Wall& wall, const WallLayout& layout,
                                         const WallSupports& supports, const Hole& hole);

}  // namespace ribwright
