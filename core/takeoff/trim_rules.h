// Which rules hold at a place.
#pragma once

#include <vector>

#include "core/job/job.h"
#include "core/takeoff/trim_places.h"

namespace ribwright {

// What a rule says of the kinds of openings it speaks of.
bool speaksOf(TrimRule::Of of, Opening::Kind kind);
// 0: any opening; 1: doors, all but doors; 2: one kind.
int narrowness(TrimRule::Of of);

// Those that speak of the place with the narrowest `of`, in the job's order; places without an opening: all of their
// `where`.
std::vector<const TrimRule*> rulesAt(const std::vector<TrimRule>& rules, const TrimPlace& place);

// Whether it is missed when no rule speaks of such a place. Covers are asked for at overhead doors alone: other
// openings come with frames of their own, common practice.
bool isExpected(const TrimPlace& place);

}  // namespace ribwright
