// An edit stands only when the job file would hold what it made: one look at the edited wall by the file's own tables.
#pragma once

#include <cstddef>
#include <utility>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// The job, or every rule of the file's tables that the wall breaks ("walls[0].openings[2].width"). Other walls and what
// the job names are not looked at.
Outcome<Job> ifWallHeld(Job edited, std::size_t wall);
// The same for the site.
Outcome<Job> ifSiteHeld(Job edited);

template <class Edit>
Outcome<Job> editedWall(const Job& job, std::size_t wall, const Edit& edit) {
  Job next = job;
  edit(next.walls.at(wall));
  return ifWallHeld(std::move(next), wall);
}

}  // namespace ribwright
