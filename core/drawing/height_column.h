// Heights in a column beside the wall, each with a line to its place on it. Unit: mm.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/wall_view.h"

namespace ribwright {

struct HeightLabel {
  std::string words;  // "g1 4' 0\"", of nested girts "g1+g2 4' 3\""
  Length z;
  std::optional<Girt::Flange> flange{};  // of a girt, the way its outer flange turns
};

// Width beside the wall that the column takes; 0 without heights.
double roomForHeights(const std::vector<HeightLabel>& heights);

// Heights rising; `outward` -1 left of the wall, +1 right of it. Gives how many found no room in the column.
int drawHeights(Sketch& sketch, const WallView& view, const std::vector<HeightLabel>& heights, double outward);

// A girt's section, seen along it: its web level, its outer flange up or down. Middle at `at`.
std::vector<PaperPoint> flangeRing(Girt::Flange flange, const PaperPoint& at);
inline constexpr double flangeReach = 1;  // half its width and its height

// x of the parts of a level line that lie in the face.
struct LevelPart {
  double from, to;
};
std::vector<LevelPart> partsInFace(const WallView& view, Length z, Length from, Length to);

}  // namespace ribwright
