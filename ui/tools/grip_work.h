// Dragging what a grip is of: an opening or one of its edges, a girt or its end, a column, a point of the outline, the
// first module line, a band's limit, a joint.
#pragma once

#include "core/editing/grips.h"
#include "ui/tools/wall_drag.h"

namespace ribwright {

std::unique_ptr<DragWork> gripWork(const DraggedWall& wall, const Grip& grip);

// Several parts at once, each as far as the others.
std::unique_ptr<DragWork> partsWork(const DraggedWall& wall, const std::vector<Part>& parts);

}  // namespace ribwright
