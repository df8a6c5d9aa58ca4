// The first wall of a job, laid out.
#pragma once

#include "core/layout/lay_out_wall.h"

namespace ribwright {

inline WallLayout layout(const Job& job) { return layOutWall(job, job.walls[0]).value(); }

}  // namespace ribwright
