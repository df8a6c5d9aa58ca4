// The workshop of the sample jobs.
#pragma once

#include "core/job/job_file.h"

namespace ribwright {

inline const Job& sampleWorkshop() {
  static const Job job = loadJob(RIBWRIGHT_ROOT "/sample-jobs/gable-workshop.json").value();
  return job;
}

}  // namespace ribwright
