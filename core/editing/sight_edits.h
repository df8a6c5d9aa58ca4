// Edits of the points from where the building is normally seen. Each gives the job as it is afterwards and leaves the
// one it was given alone. `index` into Site::sightPoints; places in the plan. Faults: there is no such point; a weight
// that is not 1 to 100; a name that is no line.
#pragma once

#include <cstddef>
#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

Outcome<Job> sightPointAdded(const Job& job, const SightPoint& point);
Outcome<Job> sightPointMovedTo(const Job& job, std::size_t index, PlanPoint to);
Outcome<Job> sightPointRenamed(const Job& job, std::size_t index, const std::string& name);
Outcome<Job> sightPointWeighted(const Job& job, std::size_t index, int weight);
Outcome<Job> sightPointRemoved(const Job& job, std::size_t index);

}  // namespace ribwright
