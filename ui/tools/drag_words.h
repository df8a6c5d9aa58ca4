// Lengths and sizes beside the pointer, and the distances to what stands beside.
#pragma once

#include <QString>
#include <string>
#include <vector>

#include "ui/tools/wall_drag.h"

namespace ribwright {

// To the mark of the tape, or finer where that says it exactly.
QString lengthWords(Length length, const LengthStyle& style);
// "4' 0" × 3' 0"".
QString sizeWords(const FaceBox& box, const LengthStyle& style);
// "+4"", "+4", −2"": how far something went each way; nothing where it did not go.
QString wayWords(const FacePoint& from, const FacePoint& to, const LengthStyle& style);

// From a box as it would stand to its neighbours. Without: ids that move along.
void addGaps(HandPicture& picture, const DraggedWall& wall, const Job& job, const FaceBox& box,
             const std::vector<std::string>& without);

}  // namespace ribwright
