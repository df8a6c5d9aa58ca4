// How a sheet lies on the slab as its pages draw it: bottom end at the left, so that one who stands at that end and
// looks along the sheet looks to the right of the page.
#pragma once

#include "core/layout/wall_layout.h"

namespace ribwright {

enum class Lying { FaceUp, FaceDown };

// The starting edge is the upper one on the page, which is at the left hand of one who stands at the bottom end. A wall
// seen from outside that hangs from left to right has its sheets' starting edges at the left; lying face up with the
// bottom end to the left of the page that edge comes to lie uppermost. Turned over or hung the other way, it is the
// lower one.
constexpr bool startsUppermost(Hand hand, Lying lying) {
  return (hand == Hand::LeftToRight) == (lying == Lying::FaceUp);
}

}  // namespace ribwright
