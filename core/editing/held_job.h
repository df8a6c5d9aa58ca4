// A whole job stands after an edit only when a job file would hold it.
#pragma once

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// `edited`, or every rule that it breaks and `before` did not.
Outcome<Job> ifJobHeld(Job edited, const Job& before);

}  // namespace ribwright
