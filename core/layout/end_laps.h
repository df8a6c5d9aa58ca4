// Where sheets too long to be made, or to be handled, lap end over end.
//
// The hole row of an end lap lies on a girt's row; the upper sheet ends `endBelowRow` below it (UFGS 07413: about 2
// in), and the lower sheet rises `lap` above that end (4 in, common practice).
#pragma once

#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// Rows that could carry an end lap over the whole of [left, right], rising.
std::vector<Length> lapRows(const Wall& wall, const std::vector<Member>& members, Length left, Length right);

// The fewest lap ends (z of upper sheets' lower ends, rising) so that no sheet from `bottom` to `top` is longer than
// `longest`, each as high as it can be. Fewer than needed when no row serves; then the sheet stays too long (a finding
// tells).
std::vector<Length> lapEndsWhereNeeded(const EndLaps& laps, const std::vector<Length>& rows, Length bottom, Length top,
                                       Length longest);

// How many of `lapEnds` divide a sheet from `bottom` to `top` (its highest), in the same sense.
int lapsNeeded(const EndLaps& laps, const std::vector<Length>& lapEnds, Length bottom, Length top, Length longest);

// The longest length that can be ordered: a whole number of increments.
Length longestOrder(const SheetLengths& lengths);

}  // namespace ribwright
