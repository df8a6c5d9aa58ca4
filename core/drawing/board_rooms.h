// The room that a label may take on the wall. Unit: mm on the face, y down.
#pragma once

#include <vector>

#include "core/drawing/board_picture.h"
#include "core/drawing/label_block.h"

namespace ribwright {

// A large upright rectangle within the columns of a shape; without extent when there is none.
Box largestRoom(const std::vector<Column>& columns);

// Rooms in a row: each reaches half way to its neighbours, the outer ones to the limits. Places rising.
std::vector<std::pair<double, double>> roomsInRow(const std::vector<double>& places, double from, double to);

}  // namespace ribwright
