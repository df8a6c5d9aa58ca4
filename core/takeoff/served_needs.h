// Sheets that are there, against lengths that are needed: a longer sheet serves a shorter need, cut to length.
#pragma once

#include <optional>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

// Which sheet serves each need, each sheet one need at most: as much needed length as possible is served, and of all
// ways to serve so much the one that leaves the least over of the sheets it takes. Exact: the needs that one more sheet
// can serve lie within those of every longer one, so going from the longest need down and giving each the shortest
// sheet left that is long enough serves a set of greatest length (the served sets are a matroid), and exchanging two
// sheets never leaves less. Of equal needs the first is served first, of equal sheets the first is taken first.
// Parallel to `needs`: an index into `sheets`. In time n log n.
std::vector<std::optional<std::size_t>> servedNeeds(const std::vector<Length>& needs,
                                                    const std::vector<Length>& sheets);

}  // namespace ribwright
