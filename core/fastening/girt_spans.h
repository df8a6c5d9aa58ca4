// Over which holds girts run: columns, and jambs that stand on the floor.
#pragma once

#include <cstdint>
#include <vector>

#include "core/fastening/supports.h"
#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct GirtHold {
  Length u;
  std::int32_t column = 0;  // its number; 0: a jamb
  bool operator==(const GirtHold&) const = default;
};

// A part of a continuous girt: one girt, or several that lap.
struct GirtPart {
  Length from, to;                  // u
  std::vector<std::int32_t> girts;  // indices into Wall::girts
  bool operator==(const GirtPart&) const = default;
};

// Steel that runs on without a break: bypass girts over their columns and through laps, flush ones from column to
// column.
struct ContinuousGirt {
  std::vector<GirtPart> parts;  // from left to right, one behind the other
  std::vector<GirtHold> holds;  // from left to right, at least two
  // The girt of the part at u, the first one where girts lap; a u beside all parts counts to the nearest.
  std::int32_t girtAt(Length u) const;
};

// A girt that ends this near to a column's middle is held by it (common practice); half the column's flange where that
// is stated and more.
inline constexpr Length endsAtColumn = Length::inches(6);

// From the lowest row up, each from left to right. None while the wall's bays are not stated: columns may stand
// anywhere.
std::vector<ContinuousGirt> continuousGirts(const Wall& wall, const WallLayout& layout, const WallSupports& supports);

}  // namespace ribwright
