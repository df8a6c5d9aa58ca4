// What becomes of a girt's readings and end laps when it is split or joined.
#pragma once

#include <string>

#include "core/job/building.h"
#include "core/units/outcome.h"

namespace ribwright {

// Readings right of u become those of `right`; end laps at `left` are at both.
void splitReadings(Wall& wall, const std::string& left, const std::string& right, Length u);

// Readings and end laps of `from` become those of `into`. Fault: both were measured at one station.
Outcome<Wall> joinedReadings(Wall wall, const std::string& into, const std::string& from);

}  // namespace ribwright
