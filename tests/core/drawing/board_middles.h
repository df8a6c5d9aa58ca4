// Asks the board for what lies in the middle of everything that the layout has.
#pragma once

#include <algorithm>
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
  // Openings that overlap, which a finding stops.
  const auto coveredByOther = [&](const CutRegion& cut, Length u) {
    return std::any_of(layout.cuts.begin(), layout.cuts.end(), [&](const CutRegion& other) {
      return other.id != cut.id && other.left <= u && other.right >= u && other.top >= cut.bottom &&
             (other.reachesFloor || cut.reachesFloor || other.bottom <= cut.top);
    });
  };
  for (const CutRegion& cut : layout.cuts) {
    // What of it is open on the wall, in its middle: it may reach past a corner, the top or the floor.
    const WallFace& face = layout.face;
    const Length across = half(std::max(cut.left, Length()) + std::min(cut.right, face.width));
    const Length floor = face.bottom.heightAt(across, Beside::Right),
                 ceiling = face.top.heightAt(across, Beside::Right);
    const Length low = cut.reachesFloor ? floor : std::max(floor, cut.lower.heightAt(across, Beside::Right));
    const Length high = std::min(ceiling, cut.upper.heightAt(across, Beside::Right));
    if (low >= high) continue;  // nothing is open there
    const double u = across.inMillimetres(), z = middle(low, high);
    if (thingOf(picture, {cut.penetration ? Part::Kind::Penetration : Part::Kind::Opening, layout.letter, cut.id}) < 0)
      continue;  // off the wall: a finding tells
    const auto found = pick(u, z);
    if (!found || (found->kind != Part::Kind::Opening && found->kind != Part::Kind::Penetration) ||
        (found->id != cut.id && !coveredByOther(cut, across)))
      missed.push_back(cut.id);
  }
  // A sheet's own metal, in the middle of the cover that its place in the run gives it.
  for (const Piece& piece : layout.pieces) {
    const Module& module =
        layout.runs.at(static_cast<std::size_t>(piece.run)).modules.at(static_cast<std::size_t>(piece.module));
    bool any = false, seen = false;
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
