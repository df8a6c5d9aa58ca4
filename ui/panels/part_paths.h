// Where in a job the chosen parts are stated.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/job/job.h"

namespace ribwright {

// Path of the object that states a part: of an opening, a penetration, a girt, a wall's columns, a wall. Absent: it
// follows (a sheet, a screw, a batch), or the job has it no more.
std::optional<std::string> pathOf(const Job& job, const Part& part);

// Of several parts of one kind; empty when one of them is of another kind or has no path.
std::vector<std::string> pathsOf(const Job& job, const std::vector<Part>& parts);

}  // namespace ribwright
