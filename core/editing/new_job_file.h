// A new job's statement in a file of its own: the defaults of a company, and those that ship inside the program.
#pragma once

#include <string>
#include <string_view>

#include "core/editing/new_job.h"
#include "core/job/job.h"

namespace ribwright {

// Read as strictly as a job file, every fault at once; `name` is what faults call the file. Lengths are not read: what
// stands there is shown in its field, with its fault.
Outcome<NewJob> readNewJob(std::string_view text, std::string_view name);
std::string writeNewJob(const NewJob& stated);

// resources/new-job.json and resources/new-job-metric.json: a building in round numbers of these units.
const NewJob& shippedNewJob(UnitSystem units);

// Cross-sections of girts that are ordinary in these units, for a start (resources/members.json; common practice).
std::vector<Member> ordinaryMembers(UnitSystem units);

}  // namespace ribwright
