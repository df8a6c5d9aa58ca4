// Openings and penetrations repeated in the bays of their wall, and brought to the wall across. Each gives the job as
// it is afterwards, and what was added to it. `wall` is an index into Job::walls; of `parts` those count that stand on
// it. Faults: as partsCopied; nothing of it stands on the wall.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/editing/part_edits.h"

namespace ribwright {

// One copy in each of `count` bays from `firstBay` (1: between columns 1 and 2) on, as far from the column at the bay's
// left as the first one stands from the column at the left of its own; anchored from that column. In its own bay the
// first one stands already. Faults: the wall has no such bays; it stands left of column 1; girts are no matter of bays.
Outcome<MadeParts> steppedAlongBays(const Job& job, std::size_t wall, const std::vector<Part>& parts, int firstBay,
                                    int count);
// The same in all bays of the wall.
Outcome<MadeParts> onePerBay(const Job& job, std::size_t wall, const std::vector<Part>& parts);

// On the wall across a rectangular building, opposite the first ones: seen from outside their mirror images. Left and
// right corner change places; a distance from a column is from the column nearest across, or from the corner where that
// wall has none. Fault: no rectangle, or no wall across.
Outcome<MadeParts> mirroredToOpposite(const Job& job, std::size_t wall, const std::vector<Part>& parts);

// Index of the wall across; absent: there is none.
std::optional<std::size_t> oppositeWall(const Job& job, std::size_t wall);

}  // namespace ribwright
