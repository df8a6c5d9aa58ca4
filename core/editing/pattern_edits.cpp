#include "core/editing/pattern_edits.h"

#include <algorithm>

#include "core/job/by_id.h"
#include "core/job/job_file_joined.h"
#include "core/job/pattern_numbers.h"
#include "core/units/typed_text.h"

namespace ribwright {
namespace {

std::vector<Fault> missingIn(const ConfirmedBy& stated) {
  std::vector<Fault> faults;
  if (isBlank(stated.planSheet))
    faults.push_back({"plan sheet", "is missing; write the sheet of the plans that the numbers were held against"});
  if (isBlank(stated.by)) faults.push_back({"by", "is missing; write who held them against it"});
  if (isBlank(stated.date)) faults.push_back({"date", "is missing; write when"});
  return faults;
}

}  // namespace

Outcome<Job> confirmPattern(const Job& job, const std::string& pattern, const ConfirmedBy& stated) {
  if (!byId(job.patterns, pattern)) return Fault{"pattern", joined("the job has no pattern \"", pattern, "\"")};
  if (std::vector<Fault> faults = missingIn(stated); !faults.empty()) return faults;
  Job next = job;
  for (ScrewPattern& one : next.patterns) {
    if (one.id == pattern)
      one.confirmation = Confirmation{stated.planSheet, stated.by, stated.date, numbersOf(one, job.screws)};
  }
  return next;
}

Job withdrawConfirmation(const Job& job, const std::string& pattern) {
  Job next = job;
  for (ScrewPattern& one : next.patterns) {
    if (one.id == pattern) one.confirmation.reset();
  }
  return next;
}

}  // namespace ribwright
