// What a person keeps as the defaults of new jobs: a file in their folder for settings.
#pragma once

#include <QString>
#include <vector>

#include "core/editing/new_job.h"
#include "core/units/outcome.h"

namespace ribwright {

QString keptNewJobPath();

struct KeptNewJob {
  NewJob stated;              // what was kept, or what ships where there is nothing, or nothing that can be read
  std::vector<Fault> faults;  // of a file that cannot be read
};
KeptNewJob keptNewJob();

// Whole or not at all; name and number are not kept.
std::vector<Fault> keepNewJob(NewJob stated);

}  // namespace ribwright
