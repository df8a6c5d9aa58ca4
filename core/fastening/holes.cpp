#include "core/fastening/holes.h"

namespace ribwright {

WallHoles holesOf(const Job&, const Wall&, const WallLayout&) { return {}; }

}  // namespace ribwright
