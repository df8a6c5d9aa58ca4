// What differs between two jobs, in short: which walls, how many openings, and whether anything else.
#pragma once

#include <string>
#include <vector>

#include "core/job/job.h"

namespace ribwright {

struct JobDifferences {
  bool name = false;
  bool building = false;                           // its outline or its roof
  bool other = false;                              // anything that is none of these and no wall
  std::vector<std::string> changed, added, taken;  // letters of walls
  int openingsAdded = 0, openingsTaken = 0, openingsChanged = 0;  // by their ids, of walls that both have

  bool none() const { return *this == JobDifferences(); }
  bool operator==(const JobDifferences&) const = default;
};

// From the first to the second.
JobDifferences differences(const Job& before, const Job& after);

}  // namespace ribwright
