// Findings that one edit puts right, and that edit.
#pragma once

#include <functional>
#include <optional>

#include "core/checks/finding.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

struct MendingEdit {
  Phrase name;  // "Put W1 where it fits"
  std::function<Outcome<Job>(const Job&)> edit;
};

// Openings off their wall, over one another or without their column go where they fit; a wall without girts gets some.
// Absent: a person has to decide, or there is no room.
std::optional<MendingEdit> mendingOf(const Job& job, const Finding& finding);

}  // namespace ribwright
