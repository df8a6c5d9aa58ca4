// Where two straight boundaries cross.
#pragma once

#include <optional>

#include "core/layout/height_line.h"

namespace ribwright {

struct Straight {
  FaceVertex a, b;  // a.u < b.u, or level (then b is not looked at)
  bool level() const { return a.z == b.z; }
};

// The straight part of a line just left or right of u.
Straight straightAt(const HeightLine& line, Length u, Beside side);

// True when `one` is no steeper than `other`.
bool isFlatter(const Straight& one, const Straight& other);

// u where the two lines (taken without end) cross, rounded half to even from the first sloped one's lower end; absent
// when parallel.
std::optional<Length> crossing(const Straight& one, const Straight& other);

}  // namespace ribwright
