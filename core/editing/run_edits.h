// Edits of how a wall's sheets run: their start, their hand, expansion joints and bands. Each gives the job as it is
// afterwards and leaves the one it was given alone.
//
// `wall` is an index into Job::walls and Plan::walls; places are u, heights z.
#pragma once

#include <cstddef>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"

namespace ribwright {

// A module line of this run (index into WallLayout::runs) comes to stand at u: the start is typed from then on, its
// offset from the run's start corner along the hanging direction and less than a cover, since the lines repeat. A band
// with a start of its own keeps one. Fault: the wall has no such run.
Outcome<Job> moduleLineMovedTo(const Job& job, const Plan& plan, std::size_t wall, std::size_t run, Length u);

Outcome<Job> hungFrom(const Job& job, std::size_t wall, Hang hang);

// `index` into Wall::expansionJoints. Faults: off the wall; at or past another joint; no such joint.
Outcome<Job> jointAdded(const Job& job, std::size_t wall, Length u);
Outcome<Job> jointMovedTo(const Job& job, std::size_t wall, std::size_t index, Length u);
Outcome<Job> jointRemoved(const Job& job, std::size_t wall, std::size_t index);

// `index` into Wall::bands. The band that z lies in ends there, and one above it begins with the same sheets, start and
// pattern, on no gap. Faults: z is a limit already, or not between the wall's lowest and highest sheet ends; no band.
Outcome<Job> bandSplitAt(const Job& job, std::size_t wall, Length z);
// Its lower limit. Faults: the lowest band has none; at or past another limit or the sheets' ends.
Outcome<Job> bandLimitMovedTo(const Job& job, std::size_t wall, std::size_t index, Length z);
// The band below goes on up to its upper limit; of the lowest, the band above goes down. Fault: it is the only one.
Outcome<Job> bandRemoved(const Job& job, std::size_t wall, std::size_t index);

}  // namespace ribwright
