#include "core/drawing/opening_kind.h"

namespace ribwright {

const char* openingKindId(Opening::Kind kind) {
  switch (kind) {
    case Opening::Kind::WalkDoor:
      return "paper.opening.walk-door";
    case Opening::Kind::OverheadDoor:
      return "paper.opening.overhead-door";
    case Opening::Kind::SlidingDoor:
      return "paper.opening.sliding-door";
    case Opening::Kind::Window:
      return "paper.opening.window";
    case Opening::Kind::Louvre:
      return "paper.opening.louvre";
    case Opening::Kind::Framed:
      break;
  }
  return "paper.opening.framed";
}

}  // namespace ribwright
