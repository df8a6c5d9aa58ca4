// Findings that someone looked at and put aside, with the reason why they are no trouble.
#pragma once

#include <string>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// `key`: Finding::key(). One that is silenced already is given the new reason. Faults: no reason; what the file's rules
// refuse of it.
Outcome<Job> findingSilenced(const Job& job, const std::string& key, const std::string& reason);
// Nothing to take back: nothing changes.
Job silenceTakenBack(const Job& job, const std::string& key);

}  // namespace ribwright
