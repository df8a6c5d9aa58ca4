// How far from both ends of a wall the corner pattern holds, by ASCE 7 or EN 1991-1-4: the checker's own reckoning.
#pragma once

#include <optional>

#include "tests/fuzz/stated_wall.h"

namespace ribwright::fuzz {

std::optional<Nm> statedZone(const Job& job, const Wall& wall, const StatedFace& face);

}  // namespace ribwright::fuzz
