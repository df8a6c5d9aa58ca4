#include "tests/fuzz/hole_checker.h"

namespace ribwright::fuzz {

void checkScrews(const ScrewedWall& wall, Complaints& complaints) {
  checkSupports(wall, complaints);
  if (!wall.layout.sheeted) {
    complaints.check(wall.holes.holes.empty() && wall.holes.refusals.empty() && wall.holes.wideSpaces.empty(),
                     "screws on a wall that is not to be sheeted");
    return;
  }
  checkPatterns(wall, complaints);
  // Places are asked of the stretches that were found, so these must hold first.
  if (!complaints.lines().empty()) return;
  checkEachHole(wall, complaints);
  checkPlaces(wall, complaints);
}

Complaints checkScrews(const Job& job, const Plan& plan) {
  Complaints complaints;
  for (std::size_t i = 0; i < job.walls.size(); ++i) {
    complaints.at("wall " + job.walls[i].letter);
    checkScrews(ScrewedWall(job, job.walls[i], *plan.walls[i]), complaints);
  }
  return complaints;
}

}  // namespace ribwright::fuzz
