// What sharing saves, kind by kind, so that a person can decide which to allow.
#pragma once

#include <vector>

#include "core/cutting/share_blanks.h"
#include "core/units/area.h"

namespace ribwright {

struct WaySaving {
  Blank::Way way = Blank::Way::RakePair;
  int blanks = 0;  // that give two pieces or more so
  Length saved;    // length bought less, all classes together
  Area steel;      // that by the whole width of the metal
  bool operator==(const WaySaving&) const = default;
};

// Of these blanks, each way but Alone, in the order of Blank::Way.
std::vector<WaySaving> savingsOf(const Job& job, const std::vector<Blank>& blanks);

// What each way would save if it alone were on, on the walls that may share: those that say so where that goes wall by
// wall, else all of them, also while sharing is off. In the order of Blank::Way, without Alone.
std::vector<WaySaving> savingsByWay(const Job& job, const std::vector<const WallLayout*>& layouts);

// The job with sharing as it would be for that.
Job withWayAlone(const Job& job, Blank::Way way);

}  // namespace ribwright
