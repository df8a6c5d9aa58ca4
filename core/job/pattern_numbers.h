// Whether a pattern's numbers still are those that someone held against the plans.
#pragma once

#include <string>
#include <vector>

#include "core/job/screws.h"

namespace ribwright {

// A digest (16 hex digits, 64-bit FNV-1a) of every number that decides where screws go: offsets per support and zone,
// in whatever order they are written, screws with their sizes, stitch spacing, which sheets of a lap get holes, limits.
// Not of the pattern's id, nor of who confirmed it.
std::string numbersOf(const ScrewPattern& pattern, const std::vector<Screw>& screws);

enum class Confirmed { Yes, No, Fallen };  // Fallen: the numbers have changed since
Confirmed confirmedIs(const ScrewPattern& pattern, const std::vector<Screw>& screws);

}  // namespace ribwright
