// The room on a drawing that texts and lines have taken, to be asked quickly. Unit: mm.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/drawing/box.h"

namespace ribwright {

class TakenRoom {
 public:
  void takeText(const Box& box);
  void takeLine(const PaperPoint& a, const PaperPoint& b, double width);

  // No text within `room` of the box, and no line's edge nearer than a hair.
  bool isFree(const Box& box, double room) const;
  bool isFreeOfText(const Box& box, double room) const;
  // A line from a to b keeps `room` from every text.
  bool isClear(const PaperPoint& a, const PaperPoint& b, double room) const;
  // The parts of a line from a to b that do, in their order.
  std::vector<std::pair<PaperPoint, PaperPoint>> clearParts(const PaperPoint& a, const PaperPoint& b,
                                                            double room) const;

 private:
  struct Line {
    PaperPoint a, b;
    double halfWidth;
  };
  // What touches one square of a grid over the paper.
  struct Square {
    std::vector<std::size_t> texts, lines;
  };
  template <class Visit>
  void visitSquares(const Box& box, const Visit& visit) const;

  std::vector<Box> texts_;
  std::vector<Line> lines_;
  std::unordered_map<std::int64_t, Square> squares_;
};

}  // namespace ribwright
