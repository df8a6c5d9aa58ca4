// One edit of a job as the board's tools make them, with places on the wall, on what stands there, and now and then
// beyond all reason: any of them gives a job that the file holds, or faults.
#pragma once

#include <string>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "tests/fuzz/dice.h"

namespace ribwright::fuzz {

struct TriedEdit {
  std::string name;
  Outcome<Job> outcome;
  bool removes = false;  // something that stands in the job may be gone after it
};

// `plan`: of this job; null: no edits that go by a plan.
TriedEdit randomEdit(const Job& job, const Plan* plan, Dice& dice);

}  // namespace ribwright::fuzz
