// The distances that a person looks at while something stands on a wall and is moved: to what stands next to it.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/editing/face_box.h"
#include "core/editing/snaps.h"

namespace ribwright {

struct NeighbourGap {
  Axis axis = Axis::U;
  Length from,
      to;         // along the axis, from the lower to the higher; from the box to the neighbour or the other way about
  Length across;  // along the other axis: the middle of the box
  Phrase name;    // of the neighbour: "column 3"
  Length length() const { return to - from; }
  bool operator==(const NeighbourGap&) const = default;
};

// To the left and to the right: the nearest jamb of an opening or edge of a penetration that stands at its height, the
// nearest column, and the corner where no opening stands between. Upward and downward: the nearest row of a girt that
// passes it, above its top and below its bottom, else the steel line and the concrete. `leftOut`: ids of what is moved.
// What touches it or lies in it is no neighbour. None on a wall that is not laid out.
std::vector<NeighbourGap> neighbourGaps(const Job& job, const Plan& plan, std::size_t wall, const FaceBox& box,
                                        const std::vector<std::string>& leftOut);

}  // namespace ribwright
