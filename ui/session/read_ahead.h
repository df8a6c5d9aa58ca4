// A job file that is read and planned in a thread of its own, while the window that will show it is still being made.
#pragma once

#include <QString>
#include <future>
#include <memory>
#include <string>

#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "ui/session/job_on_disk.h"

namespace ribwright {

struct ReadJob {
  JobOnDisk file;
  Outcome<Job> job;
  std::shared_ptr<const Plan> plan;  // of the job; null where it could not be read
};

ReadJob readAndPlan(const QString& path, const Plan& previous = {});

// Words are read along, since the window will want them. What is thrown there is thrown by get().
std::future<ReadJob> readAhead(const QString& path, const std::string& language);

}  // namespace ribwright
