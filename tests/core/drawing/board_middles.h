// Asks the board for what lies in the middle of everything that the layout has.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/board_pick.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// Marks and ids that are not found at their middles, though nothing lies over them there. Girts and columns are out of
// reach, screws unseen.
inline std::vector<std::string> missedAtTheirMiddles(const BoardPicture& picture, const WallLayout& layout) {
  std::vector<std::string> missed;
  const auto pick = [&](double u, double z) { return partAt(picture, {u, -z}, -1, 0); };
  const auto middle = [](Length a, Length b) { return (a.inMillimetres() + b.inMillimetres()) / 2; };
  for (const CutRegion& cut : layout.cuts) {
    const double u = middle(cut.left, cut.right);
    const Length bottom = cut.reachesFloor ? layout.face.bottom.highest(cut.left, cut.right) : cut.bottom;
    const double z = middle(bottom, std::min(cut.top, layout.face.top.lowest(cut.left, cut.right)));
    if (thingOf(picture, {cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening, layout.letter, cut.id}) < 0)
      continue;  // off the wall: a finding tells
    const auto found = pick(u, z);
    if (!found || (found->kind != Part::Kind::Opening && found->kind != Part::Kind::Penetration) ||
        (found->id != cut.id && layout.cuts.size() == 1))
      missed.push_back(cut.id);
  }
  // A sheet's own metal, in the middle of the cover that its place in the run gives it.
  for (const Piece& piece : layout.pieces) {
    const Module& module =
        layout.runs.at(static_cast<std::size_t>(piece.run)).modules.at(static_cast<std::size_t>(piece.module));
    bool any = false, seen = thingOf(picture, {Part::Kind::Piece, layout.letter, piece.mark}) < 0;
    for (const Cell& cell : piece.cells) {
      const Length from = std::max(cell.left, std::min(module.startLine, module.leadLine));
      const Length to = std::min(cell.right, std::max(module.startLine, module.leadLine));
      if (from >= to) continue;
      any = true;
      const auto found =
          pick(middle(from, to), (middle(cell.bottomLeft, cell.bottomRight) + middle(cell.topLeft, cell.topRight)) / 2);
      seen = seen || (found && found->kind == Part::Kind::Piece && found->id == piece.mark);
    }
    if (any && !seen) missed.push_back(piece.mark);
  }
  return missed;
}

inline std::vector<std::string> missedScrews(const BoardPicture& picture) {
  std::vector<std::string> missed;
  for (const BoardMarks& layer : picture.screws) {
    for (const BoardMark& mark : layer.marks.all()) {
      const auto found = partAt(picture, mark.at, 0.001, 100);
      if (!found || found->kind != Part::Kind::Screw) missed.push_back(std::to_string(mark.index));
    }
  }
  return missed;
}

}  // namespace ribwright
