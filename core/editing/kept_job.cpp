#include "core/editing/kept_job.h"

#include <algorithm>

namespace ribwright {

namespace {

Job withoutWalls(const Job& job) {
  Job rest = job;
  rest.walls.clear();
  return rest;
}

std::shared_ptr<const Wall> keepWall(const Wall& wall, const KeptJob* like) {
  if (like) {
    const auto same = std::find_if(like->walls.begin(), like->walls.end(),
                                   [&](const std::shared_ptr<const Wall>& known) { return *known == wall; });
    if (same != like->walls.end()) return *same;
  }
  return std::make_shared<const Wall>(wall);
}

}  // namespace

KeptJob keep(const Job& job, const KeptJob* like) {
  KeptJob kept;
  Job rest = withoutWalls(job);
  kept.rest = like && *like->rest == rest ? like->rest : std::make_shared<const Job>(std::move(rest));
  for (const Wall& wall : job.walls) kept.walls.push_back(keepWall(wall, like));
  return kept;
}

Job jobOf(const KeptJob& kept) {
  Job job = *kept.rest;
  for (const auto& wall : kept.walls) job.walls.push_back(*wall);
  return job;
}

bool isKept(const Job& job, const KeptJob& kept) {
  return std::equal(job.walls.begin(), job.walls.end(), kept.walls.begin(), kept.walls.end(),
                    [](const Wall& wall, const std::shared_ptr<const Wall>& known) { return wall == *known; }) &&
         withoutWalls(job) == *kept.rest;
}

}  // namespace ribwright
