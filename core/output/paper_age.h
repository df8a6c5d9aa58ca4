// A page that was printed earlier, held against the job as it is now.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/checks/finding.h"
#include "core/job/job.h"
#include "core/units/outcome.h"
#include "core/words/words.h"

namespace ribwright {

struct PaperAge {
  std::string page;              // its fingerprint, as printed
  std::optional<Finding> older;  // what has changed since; absent: the page is current
};

// A page in the other system of units than the job's is as good as one in the job's. Faults: no fingerprint, or of a
// wall that the job does not have.
Outcome<PaperAge> paperAge(const Job& job, std::string_view fingerprint);

// Whether it is current, in one line.
std::string ageText(const PaperAge& age, const Words& words);

}  // namespace ribwright
