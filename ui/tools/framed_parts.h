// What a frame drawn on the wall chooses: openings and holes that lie in it whole.
#pragma once

#include <vector>

#include "core/drawing/drawing.h"
#include "core/editing/face_box.h"
#include "core/job/building.h"
#include "core/plan/plan.h"

namespace ribwright {

std::vector<Part> framedParts(const WallPlan& plan, const Wall& wall, const FaceBox& frame);

}  // namespace ribwright
