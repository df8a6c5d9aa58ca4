// A job kept for undo: what stays the same is kept once. A thousand edits of one opening keep a thousand openings, and
// one of everything else.
#pragma once

#include <memory>
#include <vector>

#include "core/editing/kept_list.h"
#include "core/job/job.h"

namespace ribwright {

struct KeptWall {
  std::shared_ptr<const Wall> rest;  // without what stands below
  KeptList<Girt> girts;
  KeptList<Opening> openings;
  KeptList<Penetration> penetrations;
  KeptList<GirtSurvey> measured;
};

struct KeptJob {
  std::shared_ptr<const Job> rest;  // without what stands below
  KeptList<Profile> profiles;
  KeptList<ScrewPattern> patterns;
  KeptList<HungSheet> hung;
  KeptList<PlacedOrder> orders;
  std::vector<std::shared_ptr<const KeptWall>> walls;
};

// `like`: the state before, whose equal parts are shared; null when there is none.
KeptJob keep(const Job& job, const KeptJob* like);

// The job as it was when it was kept.
Job jobOf(const KeptJob& kept);

bool isKept(const Job& job, const KeptJob& kept);

}  // namespace ribwright
