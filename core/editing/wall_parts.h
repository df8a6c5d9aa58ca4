// What a part of a drawing is on its wall.
#pragma once

#include <optional>

#include "core/drawing/drawing.h"
#include "core/job/building.h"

namespace ribwright {

// By its id, or by its number ("#2") where it has none; null: the wall has no such girt.
const Girt* girtOf(const Wall& wall, const Part& part);
// Absent: the wall has no such column.
std::optional<int> columnOf(const Wall& wall, const Part& part);

}  // namespace ribwright
