// The next id of a kind that nothing in the building, or on the wall, is called by yet.
#pragma once

#include <cstddef>
#include <string>

#include "core/job/job.h"

namespace ribwright {

// A letter and a number: the letter that this job uses for the last opening of its kind (any door for a door), else D
// for doors, W, L for louvres, F for framed (DR, WN, LV, FR where a wall has that letter); the number one above the
// highest with that letter over the whole building, so that a number on paper never comes to mean another opening.
std::string nextOpeningId(const Job& job, Opening::Kind kind);
// For a copy of this opening: the letters of its own id where it is letters and a number, else as above.
std::string nextOpeningIdLike(const Job& job, const Opening& opening);
// The same with P.
std::string nextPenetrationId(const Job& job);
// "g3": one above the highest on the wall. Ids that the survey or the end laps still name count as taken.
std::string nextGirtId(const Job& job, std::size_t wall);

bool isDoor(Opening::Kind kind);

}  // namespace ribwright
