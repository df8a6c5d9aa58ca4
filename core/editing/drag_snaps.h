// A drag that snaps: what a grip can come to, and where it goes then.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/editing/grips.h"
#include "core/editing/snaps.h"

namespace ribwright {

// As snapCandidates, but for the grip itself and what goes along with it: its own thing, the bays beside a column and
// what is anchored from it, every module line while one is dragged. `alsoLeftOut`: ids of what else is moved.
std::vector<SnapCandidate> snapCandidatesFor(const Job& job, const Plan& plan, std::size_t wall, const Grip& grip,
                                             const std::vector<std::string>& alsoLeftOut = {});

struct SnappedDrag {
  FacePoint to;                    // where the grip goes
  std::optional<Snap> across, up;  // what it snapped to; absent: nothing within reach
  bool operator==(const SnappedDrag&) const = default;
};

// `to`: where the pointer takes the grip, in the job that it was taken in. An opening or penetration taken whole snaps
// by its edges and its middle, to whole units by its left and lower edge; a girt by its row, to whole units by its
// typed height. `reach`, `unit` and `style` as for snap.
SnappedDrag snappedDrag(const Job& job, std::size_t wall, const Grip& grip, FacePoint to,
                        const std::vector<SnapCandidate>& candidates, Length reach, Length unit,
                        const LengthStyle& style);

}  // namespace ribwright
