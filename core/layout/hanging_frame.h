// Hanging coordinates of a run: t grows along the hanging direction from the run's start corner, whichever hand it
// hangs.
//
// Layout works in t, so that each rule is written once; results are turned back to u.
#pragma once

#include "core/layout/height_line.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct HangingFrame {
  Length left, right;  // u limits of the run
  Hand hand = Hand::LeftToRight;

  Length length() const { return right - left; }
  Length toHanging(Length u) const { return hand == Hand::LeftToRight ? u - left : right - u; }
  Length toFace(Length t) const { return hand == Hand::LeftToRight ? left + t : right - t; }
  HeightLine toHanging(const HeightLine& line) const {
    return hand == Hand::LeftToRight ? line.moved(-left) : line.mirrored(right);
  }
};

}  // namespace ribwright
