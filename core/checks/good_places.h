// Where across a sheet a structural screw would hold, for the remedy of one that does not: on a flat, clear of the
// metal edges in the side laps, and in a lap on the other sheet's flat too. For sheets that lap at their own cover.
#pragma once

#include <optional>
#include <vector>

#include "core/fastening/seats.h"
#include "core/job/job.h"

namespace ribwright {

// x from the module line, 0 <= x < cover, rising.
std::vector<Flat> goodPlaces(const Profile& profile, const Screw& screw);

// The good place nearest to x, on a whole 1/16 in or millimetre where the flat has one. Absent: there is none.
std::optional<Length> nearestGoodPlace(const std::vector<Flat>& places, Length x, UnitSystem units);

}  // namespace ribwright
