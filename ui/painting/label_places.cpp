#include "ui/painting/label_places.h"

#include <algorithm>

namespace ribwright {

namespace {

// The start of a stretch of `size` with its middle at `middle`, kept in [from, to] where it fits.
double kept(double middle, double size, double from, double to) {
  const double start = middle - size / 2;
  return size > to - from ? start : std::clamp(start, from, to - size);
}

// In the room, and of the room in the part that is seen.
double kept(double middle, double size, double from, double to, double seenFrom, double seenTo) {
  const double low = std::max(from, seenFrom), high = std::min(to, seenTo);
  return high - low >= size ? kept(middle, size, low, high) : kept(middle, size, from, to);
}

}  // namespace

QRectF placeOf(const BoardLabel& label, const BoardForm& form, const BoardView& view, const QRectF& area,
               double capital, bool& moved) {
  using Stand = BoardLabel::Stand;
  const QPointF at = view.at(label.at) + QPointF(label.off.x, label.off.y) * capital;
  const QRectF room = view.at(label.room);
  const double width = form.width * capital, height = form.height * capital;
  // What stands over or under the wall names one line of it, a column or a joint, and never leaves that line.
  const double across = kept(at.x(), width, room.left(), room.right());
  moved = false;
  switch (label.stand) {
    case Stand::Within:
      return {kept(at.x(), width, room.left(), room.right(), area.left(), area.right()),
              kept(at.y(), height, room.top(), room.bottom(), area.top(), area.bottom()), width, height};
    case Stand::Under: {
      moved = label.stays && at.y() + height > area.bottom();
      return {across, moved ? area.bottom() - height : at.y(), width, height};
    }
    case Stand::Over:
      return {across, at.y() - height, width, height};
    case Stand::Before: {
      moved = label.stays && at.x() - width < area.left();
      return {moved ? area.left() : at.x() - width, kept(at.y(), height, room.top(), room.bottom()), width, height};
    }
    case Stand::After:
      break;
  }
  return {at.x(), kept(at.y(), height, room.top(), room.bottom()), width, height};
}

}  // namespace ribwright
