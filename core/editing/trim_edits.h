// Edits of a job's trim.
#pragma once

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// Takes the set of trim that ships for the job's units (core/job/trim_file.h), in the colour of the first wall's first
// band. What the job states stays: rules come for what no rule speaks of yet, and trims that they name and the job has
// not. A fault: the job has rules for all of it.
Outcome<Job> takeShippedTrim(const Job& job);

}  // namespace ribwright
