// Invented jobs that ship inside the program, to look at and to begin from.
#pragma once

#include <string_view>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

// By file name. Each is a job that no file of the person's holds.
std::vector<std::string_view> sampleNames();
// The job of one of them; throws std::logic_error for another name.
Job sampleJob(std::string_view name);

}  // namespace ribwright
