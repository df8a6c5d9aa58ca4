// Where along a wall an anchor points, and the anchor that points to a given place. An anchor stays what it is, the
// same column or corner, near jamb or centre: only its distance is restated.
#pragma once

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// Width of the wall's face, u from 0 to it. Fault: the wall has no place in the plan and no width.
Outcome<Length> faceWidth(const Job& job, const Wall& wall);

// u of the place that the anchor names: a jamb or the centre. Faults: its column is not there; from the right corner:
// as faceWidth.
Outcome<Length> anchoredPlace(const Job& job, const Wall& wall, const Anchor& anchor);

// `stated` with the distance that brings it to u. Faults as above.
Outcome<Anchor> anchoredAt(const Job& job, const Wall& wall, const Anchor& stated, Length u);

// To the near jamb, from the nearest column (the left one of two as near), or from the left corner where the wall has
// no columns.
Anchor anchorNear(const Wall& wall, Length u);

// What an anchor of an opening of this width names, where its left jamb stands at `left`; and the other way about.
Length anchoredEdge(const Anchor& anchor, Length width, Length left);
Length leftOf(const Anchor& anchor, Length width, Length named);

}  // namespace ribwright
