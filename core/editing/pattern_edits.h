// Edits of how far a pattern's numbers are vouched for.
#pragma once

#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct ConfirmedBy {
  std::string planSheet, by, date;
};

// Writes down that someone held the pattern's numbers, as they stand now, against a plan sheet. All three are needed:
// what is missing is a fault. So is a pattern that the job has not.
Outcome<Job> confirmPattern(const Job& job, const std::string& pattern, const ConfirmedBy& stated);
// Takes it back. Nothing to take back: nothing changes.
Job withdrawConfirmation(const Job& job, const std::string& pattern);

}  // namespace ribwright
