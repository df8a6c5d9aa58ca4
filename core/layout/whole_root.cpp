#include "core/layout/whole_root.h"

namespace ribwright {

Int128 wholeRoot(Int128 square) {
  Int128 low = 0, high = Int128(1) << 62;
  while (low < high) {
    const Int128 middle = (low + high + 1) / 2;
    if (middle * middle <= square) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

Length distance(const PlanPoint& a, const PlanPoint& b) {
  const Int128 dx = (b.x - a.x).nanometres(), dy = (b.y - a.y).nanometres();
  const Int128 square = dx * dx + dy * dy;
  const Int128 root = wholeRoot(square);
  const bool nearerToNext = square - root * root > root;
  return Length::nanometres(static_cast<std::int64_t>(root + (nearerToNext ? 1 : 0)));
}

}  // namespace ribwright
