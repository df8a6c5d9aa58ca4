// Edits of several chosen parts at once: all of them, or none and the faults. Each gives the job as it is afterwards
// and leaves the one it was given alone.
//
// Openings, penetrations, girts and columns are edited; a part that follows from others (a sheet, a screw, a batch) or
// a whole wall is a fault, and so is one that the job has not. A part named twice counts once.
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// What is anchored from a column that goes stays where it is.
Outcome<Job> partsRemoved(const Job& job, const std::vector<Part>& parts);

// Nudged along their walls and upward. Each of them goes that far once, also one that is anchored from a column that
// goes too; what is anchored from such a column and not chosen goes with it. Girts go up alone where they run from
// corner to corner, and with their stated ends else; columns go along alone.
Outcome<Job> partsMoved(const Job& job, const std::vector<Part>& parts, Length du, Length dz);

struct MadeParts {
  Job job;
  std::vector<Part> parts;  // what was added to it, to be chosen next
};

// Beside the first ones on the same walls, under new ids and anchored from the same columns and corners. Faults: a
// column is not copied but added; a girt would lie on the first one.
Outcome<MadeParts> partsCopied(const Job& job, const std::vector<Part>& parts, FacePoint by);

}  // namespace ribwright
