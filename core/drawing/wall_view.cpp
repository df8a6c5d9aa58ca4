#include "core/drawing/wall_view.h"

#include <algorithm>

namespace ribwright {

namespace {

// The sheet hung after this one in its run lies over its leading edge.
const Module* nextSheet(const WallLayout& layout, const Piece& piece) {
  const auto& modules = layout.runs[static_cast<std::size_t>(piece.run)].modules;
  const auto next = static_cast<std::size_t>(piece.module) + 1;
  return next < modules.size() ? &modules[next] : nullptr;
}

const Piece* upperTier(const WallLayout& layout, const Piece& piece) {
  const SheetRun& run = layout.runs[static_cast<std::size_t>(piece.run)];
  if (!run.modules[static_cast<std::size_t>(piece.module)].tiered) return nullptr;
  const auto found = std::find_if(layout.pieces.begin(), layout.pieces.end(), [&](const Piece& other) {
    return other.run == piece.run && other.module == piece.module && other.tier == piece.tier + 1 &&
           other.bottom < piece.top && other.bottom > piece.bottom;
  });
  return found == layout.pieces.end() ? nullptr : &*found;
}

}  // namespace

SeenPart seenPart(const WallView& view, const Piece& piece) {
  SeenPart seen{piece.left, piece.right, piece.top};
  if (const Module* next = nextSheet(*view.layout, piece)) {
    if (view.layout->direction.hand == Hand::LeftToRight) seen.right = std::min(seen.right, next->metalLeft);
    if (view.layout->direction.hand == Hand::RightToLeft) seen.left = std::max(seen.left, next->metalRight);
  }
  if (const Piece* upper = upperTier(*view.layout, piece)) seen.top = upper->bottom;
  seen.left = std::max(seen.left, view.from);
  seen.right = std::min(seen.right, view.to);
  return seen;
}

bool isNamedHere(const WallView& view, const Piece& piece) {
  WallView whole = view;
  whole.from = Length();
  whole.to = view.layout->face.width;
  const SeenPart seen = seenPart(whole, piece);
  if (seen.empty()) return view.shows(half(piece.left + piece.right));
  const Length middle = half(seen.left + seen.right);
  return middle >= view.from && (middle < view.to || view.hasRightCorner());
}

Length highestSeen(const WallView& view) {
  const WallFace& face = view.layout->face;
  return std::max(face.steel.highest(view.from, view.to), face.top.highest(view.from, view.to));
}

Length lowestSeen(const WallView& view) {
  const WallFace& face = view.layout->face;
  return std::min({face.bottom.lowest(view.from, view.to), face.concrete.lowest(view.from, view.to), Length()});
}

}  // namespace ribwright
