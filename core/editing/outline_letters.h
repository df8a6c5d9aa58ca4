// Walls that stand on an outline's edges do so by their letters; what would give them another edge, or none, is
// refused.
#pragma once

#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/job/job_file_form.h"
#include "core/units/outcome.h"

namespace ribwright {

// Why this change of the list at `list` may not be. Of other lists than corners and walls: never.
std::vector<Fault> lettersLost(const Job& job, std::string_view list, const ListChange& change);

}  // namespace ribwright
