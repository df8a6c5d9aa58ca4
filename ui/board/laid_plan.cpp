#include "ui/board/laid_plan.h"

#include "ui/board/hand_picture.h"

namespace ribwright {

Outcome<QTransform> toFaceOf(const LaidPlan& laid) {
  std::array<PointPair, 2> pairs;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    const PaperPoint place = onBoard(laid.places[i]);
    pairs[i] = {laid.points[i], {place.x, place.y}};
  }
  return similarityOf(pairs);
}

}  // namespace ribwright
