// How a job's lengths are written and read.
#pragma once

#include "core/job/job.h"
#include "core/units/length_text.h"

namespace ribwright {

inline LengthStyle styleOf(const Job& job) { return {job.units, job.decimalSign}; }

}  // namespace ribwright
