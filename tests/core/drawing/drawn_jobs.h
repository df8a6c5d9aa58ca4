// Invented buildings to draw.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace ribwright {

struct DrawnJob {
  std::string name;
  Job job;
  Plan plan;
};

Profile ribbedSheet();     // 36 in cover, lip 1-1/2 in, leg 3/4 in
Profile trapezoidSheet();  // 1000 mm cover

// The frozen gable: 40 ft, eave 12 ft, 4:12.
Job frozenGable();
// Front of a shop, 60 ft x 12 ft, with three doors, windows and pipes close to seams and corners.
Job busyFront();
// Gable end of a metric hall, ridge off the middle, unequal eaves, hung right to left.
Job metricGable();
// A wall of 334 sheets and 1002 ft with doors every 50 ft.
Job longWall();
// 3 ft wide.
Job narrowWall();
// Concrete in three steps under a level eave.
Job steppedWall();
// A door of 60 ft.
Job hangarDoor();
// Two expansion joints, end laps and two bands.
Job tallBandedWall();
// Sheets of a shipped profile with its example pattern, and girts at every `step` (absent: those that are there).
Job withScrews(Job job, const std::string& profile, std::optional<Length> step);
// The busy front with girts every 3 ft.
Job screwedFront();
// Girts every 3 in over 12 ft: more heights than stand beside the wall.
Job crowdedGirts();

// One wall by others, one open, one whose top is not stated.
Job unsheetedWalls();

// All of them, each planned.
std::vector<DrawnJob> drawnJobs();
DrawnJob planned(const std::string& name, const Job& job);

}  // namespace ribwright
