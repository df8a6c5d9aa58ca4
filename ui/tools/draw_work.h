// Drawing something new on a wall: from corner to corner, or at one place.
#pragma once

#include "ui/tools/tool_kind.h"
#include "ui/tools/wall_drag.h"

namespace ribwright {

// The tool draws from one corner to another; else it puts something at a place, or does not draw at all.
bool drawsBoxes(ToolKind tool);
bool putsAtPlaces(ToolKind tool);

// The first corner: nothing is made yet.
std::unique_ptr<DragWork> cornerWork(const DraggedWall& wall);
// Where a box that is begun at a corner is reckoned from: a door from the concrete under it.
FacePoint boxStart(const DraggedWall& wall, ToolKind tool, const FacePoint& corner);
std::unique_ptr<DragWork> boxWork(const DraggedWall& wall, ToolKind tool, const FacePoint& corner);
std::unique_ptr<DragWork> placeWork(const DraggedWall& wall, ToolKind tool);

}  // namespace ribwright
