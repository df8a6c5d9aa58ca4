// What is looked at once for the whole job, not wall by wall.
#pragma once

#include <string_view>
#include <vector>

#include "core/checks/finding.h"
#include "core/job/job.h"

namespace ribwright {

// Hole patterns as they are stated: whether someone held their numbers against the plans, and whether the numbers can
// be meant. A pattern that no wall uses is not looked at.
void checkPatternNumbers(const Job& job, std::vector<Finding>& findings);

// Openings and penetrations that are called like a sheet of another wall.
void checkOpeningIds(const Job& job, std::vector<Finding>& findings);

// Whether this could be the mark of a whole sheet of one of the job's walls, as B7.
bool isSheetMark(const Job& job, std::string_view mark);

}  // namespace ribwright
