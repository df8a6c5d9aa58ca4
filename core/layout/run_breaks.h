// Where the face of a run is cut upright: at metal edges, jambs and vertices, and where boundaries cross.
#pragma once

#include <vector>

#include "core/layout/column_sweep.h"

namespace ribwright {

// Where a boundary crosses another, and the height that both take there.
struct Meeting {
  Length t;
  EdgeSource::Kind kind = EdgeSource::Kind::Bottom;
  int index = 0;
  Length z;
  bool isOf(const Boundary& boundary) const { return kind == boundary.kind && index == boundary.index; }
};

struct RunBreaks {
  std::vector<Length> breaks;     // t, rising, from the face's start to its end
  std::vector<Meeting> meetings;  // by t
  Length heightOf(const Boundary& boundary, Length t, Beside side) const;
};

RunBreaks breaksOf(const RunFace& face);

}  // namespace ribwright
