// Whether a pattern's numbers still are those that someone held against the plans.
#pragma once

#include <string>
#include <vector>

#include "core/job/screws.h"

namespace ribwright {

// A digest (16 hex digits, 64-bit FNV-1a) of everything that decides where screws go: the profile that the pattern is
// for, offsets per support and zone, in whatever order they are written (of rows for one support and zone the first
// counts), screws with their sizes, stitch spacing, which sheets of a lap get holes, limits. Not of the ids of the
// pattern and its screws, nor of who confirmed it or approved wider spacing, nor of what is drilled where it hangs.
// Jobs keep it, so that it means the same for good.
std::string numbersOf(const ScrewPattern& pattern, const std::vector<Screw>& screws);

enum class Confirmed { Yes, No, Fallen };  // Fallen: the numbers have changed since
// A confirmation needs plan sheet, name and date; without one of them it is none.
Confirmed confirmedIs(const ScrewPattern& pattern, const std::vector<Screw>& screws);

}  // namespace ribwright
