// A wall's screws seen in a mirror or raised, to compare with those of the wall stated so; and as text.
#pragma once

#include <string>

#include "core/fastening/holes.h"

namespace ribwright::fuzz {

WallHoles mirrored(const WallHoles& holes, Length width, int columns);
WallHoles raised(const WallHoles& holes, Length by);

// Every field in nanometres; refusals and wide spaces in a fixed order.
std::string holesText(const WallHoles& holes);

}  // namespace ribwright::fuzz
