// A label of one or more lines, and the free places for it within a shape. Unit: mm.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/sketch.h"
#include "core/drawing/text_extent.h"

namespace ribwright {

struct LabelRun {
  std::string words;
  double height = smallText;
  bool bold = false;
};
using LabelLine = std::vector<LabelRun>;  // never empty

struct LabelBlock {
  std::vector<LabelLine> lines;  // the first uppermost
  bool upward = false;           // reads upward, its first line at the left

  // Extent on paper, as it lies.
  double width() const { return upward ? across() : along(); }
  double height() const { return upward ? along() : across(); }

 private:
  double along() const;
  double across() const;
};

Box boxAround(const LabelBlock& block, const PaperPoint& middle);
void drawLabel(Sketch& sketch, const LabelBlock& block, const PaperPoint& middle, PartIndex part);

// An upright-sided part of a shape on paper: x to the right, heights UP from y = 0, so that y = -height.
struct Column {
  double left, right;
  double bottomLeft, bottomRight, topLeft, topRight;
};

// Middles at which a rectangle lies wholly inside the columns, the best first: nearest to the shape's middle across,
// then nearest to `height` up.
std::vector<PaperPoint> spotsIn(const std::vector<Column>& columns, double width, double tall, double height);

}  // namespace ribwright
