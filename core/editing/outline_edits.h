// Edits of a wall's outline: the points of its stated top and the steps of its base. Each gives the job as it is
// afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls, `index` one into Wall::top or Base::steps. Points go from left to right: top
// points may stand upright over each other as a step, base steps may not. What the base is made of (form, drop, depth,
// shelf, gap) is not touched. Faults: there is no such point; it would come past another; a slope steeper than 1000
// in 1.
#pragma once

#include <cstddef>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// Put in right of every point at its place or left of it. Fault: the top follows from the roof, and is not stated here.
Outcome<Job> topPointAdded(const Job& job, std::size_t wall, FacePoint at);
Outcome<Job> topPointMovedTo(const Job& job, std::size_t wall, std::size_t index, FacePoint to);
// Fault: it is the only one.
Outcome<Job> topPointRemoved(const Job& job, std::size_t wall, std::size_t index);

Outcome<Job> baseStepAdded(const Job& job, std::size_t wall, FacePoint at);
Outcome<Job> baseStepMovedTo(const Job& job, std::size_t wall, std::size_t index, FacePoint to);
Outcome<Job> baseStepRemoved(const Job& job, std::size_t wall, std::size_t index);

}  // namespace ribwright
