// What can be done about a finding by an edit, where an honest one is there: it states nothing that only the plans, the
// engineer or the site can know.
//
// Each that is offered was tried: applied to this job, the finding is gone and no stop has come.
#pragma once

#include <functional>
#include <vector>

#include "core/checks/finding.h"
#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "core/words/words.h"

namespace ribwright {

struct OfferedRemedy {
  Phrase name;  // "Start with equal rips": also of the edit
  // Made on demand, from this job or a newer one.
  std::function<Outcome<Job>(const Job&)> edit;
  // What it does beside: how many other findings go with it, and how many come.
  int othersGone = 0, othersCome = 0;
};

// Those first after which the fewest findings are left; of two alike the one that is nearer to what is stated.
// `finding`: one of the plan's. Empty: there is none.
std::vector<OfferedRemedy> remediesFor(const Job& job, const Plan& plan, const Finding& finding);

}  // namespace ribwright
