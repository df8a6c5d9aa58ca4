// Pasting where there is room: as it was copied, or bays further along.
#pragma once

#include <cstddef>

#include "core/editing/copied_parts.h"
#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// As pasted(); where an opening or penetration would lie on one that is there, all of them are moved along together by
// the least number of bays that frees them on the wall's face, to the right before to the left; where no bay does, or
// the wall has no columns, in steps of their whole width and 1 ft. Where there is no room at all they are put as they
// were copied, and the checks tell. Faults: as pasted(); a girt would lie on one that is there.
Outcome<MadeParts> pastedWhereFree(const Job& job, std::size_t wall, const CopiedParts& copied);

}  // namespace ribwright
