// A wall on which something is missing, and the edit that brings it.
//
// `wall` is an index into Job::walls.
#pragma once

#include <cstddef>
#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

enum class WallLacks { Nothing, Sheets, Profile, Girts };
// The first that is missing: an open wall has no sheets, sheets have no profile, a sheeted wall has no girts.
WallLacks lacking(const Wall& wall);

// It is sheeted from then on, with the profile of the first band of the job that has one.
Outcome<Job> sheetsHung(const Job& job, std::size_t wall);
// Bands without a profile take it; a shipped one is copied into the job. Fault: there is no such profile.
Outcome<Job> profileHung(const Job& job, std::size_t wall, const std::string& profile);
// Those of the first wall that has girts, as many as stand under this wall's steel line; where no wall has any, at the
// heights that new jobs begin with. Faults: the wall has girts; it has no top; none would stand under it.
Outcome<Job> girtsAdded(const Job& job, std::size_t wall);

}  // namespace ribwright
