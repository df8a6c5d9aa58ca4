// How wide a wall really is and how far it leans along itself, from its two measured diagonals.
//
// Assumed: the diagonals run between the four corners of a parallelogram in the wall's own plane, each from the top of
// concrete at one corner to the steel line at the other; base and top are level and equally wide, both columns lean
// alike; the height between base and top is the one of the plans, measured upright. A gable's corners are those of its
// eaves. Then, with the top `lean` to the right of the base,
//   rising^2  = (width + lean)^2 + height^2        rising: bottom left to top right
//   falling^2 = (width - lean)^2 + height^2        falling: top left to bottom right
// so that rising^2 - falling^2 = 4 width lean. Width and lean are off by no more than the two readings are off on
// average, times diagonal / width.
#pragma once

#include <optional>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct Squareness {
  Length width;   // measured; to the nearest nanometre, as is the lean
  Length lean;    // of the top against the base; positive to the right, seen from outside
  Length height;  // by the plans, over which it leans
  bool operator==(const Squareness&) const = default;
};

// From diagonals and height; nothing unless each diagonal is longer than the height.
std::optional<Squareness> squareness(Length rising, Length falling, Length height);

// Of a wall. Nothing: one of the diagonals is not measured, or by the plans concrete or steel line stand higher at one
// corner than at the other.
std::optional<Squareness> squareness(const Wall& wall, const WallFace& face);

// A wall that leans more over `height` is out of square: 1/4 in in 10 ft, 1 in 480 (common practice).
Length mostLean(Length height);
// A wall that is wider or narrower by more changes its rips or its first module line (common practice).
inline constexpr Length mostOffWidth = Length::inches(0, 32);

}  // namespace ribwright
