#include "core/editing/job_differences.h"

#include <algorithm>

namespace ribwright {
namespace {

const Wall* wallOf(const Job& job, const std::string& letter) {
  const auto found =
      std::find_if(job.walls.begin(), job.walls.end(), [&](const Wall& wall) { return wall.letter == letter; });
  return found == job.walls.end() ? nullptr : &*found;
}

const Opening* openingOf(const Wall& wall, const std::string& id) {
  const auto found = std::find_if(wall.openings.begin(), wall.openings.end(),
                                  [&](const Opening& opening) { return opening.id == id; });
  return found == wall.openings.end() ? nullptr : &*found;
}

void compareOpenings(const Wall& before, const Wall& after, JobDifferences& found) {
  for (const Opening& opening : after.openings) {
    const Opening* was = openingOf(before, opening.id);
    if (!was) ++found.openingsAdded;
    if (was && *was != opening) ++found.openingsChanged;
  }
  for (const Opening& opening : before.openings) {
    if (!openingOf(after, opening.id)) ++found.openingsTaken;
  }
}

// What is left of a job when its name, its building and its walls are taken away.
Job rest(Job job) {
  job.name.clear();
  job.building = Building();
  job.walls.clear();
  return job;
}

}  // namespace

JobDifferences differences(const Job& before, const Job& after) {
  JobDifferences found;
  found.name = before.name != after.name;
  found.building = before.building != after.building;
  found.other = rest(before) != rest(after);
  for (const Wall& wall : after.walls) {
    const Wall* was = wallOf(before, wall.letter);
    if (!was) found.added.push_back(wall.letter);
    if (!was || *was == wall) continue;
    found.changed.push_back(wall.letter);
    compareOpenings(*was, wall, found);
  }
  for (const Wall& wall : before.walls) {
    if (!wallOf(after, wall.letter)) found.taken.push_back(wall.letter);
  }
  return found;
}

}  // namespace ribwright
