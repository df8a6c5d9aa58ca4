// Where the first module line of a run stands, from the run's start corner along the hanging direction.
//
// Returned offsets lie in [0, cover): the run repeats every cover, and what matters is where its lines fall.
#pragma once

#include <optional>
#include <vector>

#include "core/job/building.h"
#include "core/job/profile.h"
#include "core/layout/hanging_frame.h"

namespace ribwright {

struct StartPlace {
  Length length;                // of the run
  std::optional<Length> ridge;  // t
  std::vector<CutRegion> cuts;  // of the wall
  HangingFrame frame;
};

// Absent when the rule has nothing to go by: no ridge on this run, no such opening; and for BestOfSearch.
std::optional<Length> startOffset(const Start& start, const Profile& profile, const StartPlace& place);

// As many full sheets as leave each end a rip of at least half a cover and less than a whole one.
Length equalRipsOffset(Length length, Length cover);

// What a search tries: multiples of `step` in [0, cover) and every offset that puts a module line at a jamb's cut edge
// -,
// + `jambLimit`, at the ridge or at a corner, a lap just beyond a jamb, or the factory edge on the corner. Rising, none
// twice.
std::vector<Length> startCandidates(const Profile& profile, const StartPlace& place, Length step, Length jambLimit);

}  // namespace ribwright
