// A job kept for undo: a wall, or all that is not walls, is kept once as long as it stays the same.
#pragma once

#include <memory>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

struct KeptJob {
  std::shared_ptr<const Job> rest;  // without walls
  std::vector<std::shared_ptr<const Wall>> walls;
};

// `like`: the state before, whose equal parts are shared; null when there is none.
KeptJob keep(const Job& job, const KeptJob* like);

// The job as it was when it was kept.
Job jobOf(const KeptJob& kept);

bool isKept(const Job& job, const KeptJob& kept);

}  // namespace ribwright
