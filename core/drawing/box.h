// Upright rectangles on paper: what text and drawings take up. Unit: mm, y down.
#pragma once

#include <vector>

#include "core/drawing/drawing.h"

namespace ribwright {

struct Box {
  double left = 0, top = 0, right = 0, bottom = 0;
  double width() const { return right - left; }
  double height() const { return bottom - top; }
  PaperPoint middle() const { return {(left + right) / 2, (top + bottom) / 2}; }
  Box grown(double by) const { return {left - by, top - by, right + by, bottom + by}; }
  bool operator==(const Box&) const = default;
};

// Sharing more than an edge.
bool overlap(const Box& a, const Box& b);
bool inside(const Box& inner, const Box& outer);
Box united(const Box& a, const Box& b);

// True when some point of the straight line from a to b lies strictly inside the box.
bool crosses(const Box& box, const PaperPoint& a, const PaperPoint& b);

}  // namespace ribwright
