// A wall stated again elsewhere: free of its building, seen in a mirror, raised; a building moved in its plan. And
// layouts moved the same way, to compare.
#pragma once

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright::fuzz {

// What was the left limit becomes the right one.
void turnLimits(Length& left, Length& right, Length width);

// Only this wall, free, its top, its hang and its corner zone typed, every opening placed from the left corner.
Job freed(const Job& job, const Wall& wall, Hand hand);
// A job of one free wall.
Job mirrored(const Job& job);
Job raised(const Job& job, Length by);
Job movedInPlan(const Job& job, Length x, Length y);

WallLayout mirrored(const WallLayout& layout);
WallLayout raised(const WallLayout& layout, Length by);
// Rings start at their lowest left vertex, inner rings and cells in a fixed order: two layouts that mean the same are
// equal.
WallLayout inFixedOrder(WallLayout layout);

}  // namespace ribwright::fuzz
