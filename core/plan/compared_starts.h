// One wall laid out from every start that makes sense for it, side by side.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "core/layout/start_rank.h"
#include "core/plan/plan.h"

namespace ribwright {

struct ComparedStart {
  Start start;
  bool stands = false;                      // the wall goes by it now
  std::optional<Length> firstRip, lastRip;  // metal's width of the first and the last sheet hung; absent: not ripped
  int sheets = 0;                           // pieces
  int lengths = 0, seamsNearJambs = 0, narrowRips = 0;
  int stops = 0, looks = 0;  // findings of this wall that nobody put aside
  Area steel;                // bought: blanks by the profile's whole width
  StartRank rank;
  bool operator==(const ComparedStart&) const = default;
};

// The start that a wall goes by: of its lowest band where that has one of its own, else the wall's; and the job that
// goes by another there. `wall` is an index into Job::walls.
const Start& startOf(const Wall& wall);
Job withStart(const Job& job, std::size_t wall, const Start& start);

// Starts that have something to go by on this wall, in the order of their rules: flush, module line on the corner,
// equal rips, ridge, a seam at each jamb, best of the search; the one that stands where it is none of these. Empty on a
// wall without sheets.
std::vector<Start> startsFor(const Job& job, const Plan& plan, std::size_t wall);
// `plan` is of `job`: what is not this wall's is taken from it.
ComparedStart comparedStart(const Job& job, const Plan& plan, std::size_t wall, const Start& start);
// All of them, the best first, as StartRank has it; equally good ones in the order above.
std::vector<ComparedStart> comparedStarts(const Job& job, const Plan& plan, std::size_t wall);

// The best of all starts on the tape's marks.
struct StartSearch {
  std::optional<Start> best;  // typed; absent: stopped before the first, or the wall has no sheets
  bool whole = false;         // not stopped
};
// `goOn` is told how much is done, 0 to 1, before each; false: stop. The same job gives the same result.
StartSearch searchStarts(const Job& job, std::size_t wall, const std::function<bool(double)>& goOn);

}  // namespace ribwright
