// Which girts a wall of a new job gets, as heights from the top of concrete.
#pragma once

#include <vector>

#include "core/editing/new_job_reading.h"
#include "core/layout/wall_face.h"

namespace ribwright {

struct GirtHeights {
  std::vector<Length> stated;  // what was typed, each to be looked at
  std::vector<Length> there;   // what the wall gets
};

// Of a single slope's side walls the higher one may have girts that the lower one has no room for.
std::vector<Length> sideGirtsThatFit(const NewJobRead& read, const WallFace& face);

// As typed; else those of the sides and on upward at their last spacing, none nearer to the ridge than a foot (common
// practice).
GirtHeights endGirtHeights(const NewJobRead& read, const WallFace& face);

}  // namespace ribwright
