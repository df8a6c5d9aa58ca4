// The trade's rules: what is said of each piece, taken from its cells alone.
#include <algorithm>
#include <cstdlib>

#include "tests/fuzz/layout_checker.h"
#include "tests/fuzz/slab_parts.h"

namespace ribwright::fuzz {
namespace {

bool connected(const std::vector<Cell>& cells) {
  std::vector<bool> reached(cells.size(), false);
  std::vector<std::size_t> next{0};
  reached[0] = true;
  std::size_t count = 1;
  while (!next.empty()) {
    const std::size_t at = next.back();
    next.pop_back();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (reached[i] || !adjoin(cells[at], cells[i])) continue;
      reached[i] = true;
      ++count;
      next.push_back(i);
    }
  }
  return count == cells.size();
}

// The top edge of a piece between two breaks.
struct TopPart {
  Length left, right, zLeft, zRight;
};

std::vector<TopPart> topEdge(const Piece& piece) {
  std::vector<TopPart> parts;
  for (const Cell& cell : piece.cells) {
    const auto same =
        std::find_if(parts.begin(), parts.end(), [&](const TopPart& part) { return part.left == cell.left; });
    if (same == parts.end()) {
      parts.push_back({cell.left, cell.right, cell.topLeft, cell.topRight});
    } else if (cell.topLeft + cell.topRight > same->zLeft + same->zRight) {
      *same = {cell.left, cell.right, cell.topLeft, cell.topRight};
    }
  }
  std::sort(parts.begin(), parts.end(), [](const TopPart& a, const TopPart& b) { return a.left < b.left; });
  return parts;
}

class PieceCheck {
 public:
  PieceCheck(const CheckedWall& wall, const Piece& piece, Complaints& complaints)
      : wall_(wall),
        piece_(piece),
        run_(wall.layout.runs[static_cast<std::size_t>(piece.run)]),
        module_(run_.modules[static_cast<std::size_t>(piece.module)]),
        profile_(*profileOf(wall.job, wall.wall, run_.band)),
        complaints_(complaints) {}

  void all() {
    checkCells();
    checkExtents();
    checkTopEdge();
    checkFlags();
    checkBlank();
  }

 private:
  bool check(bool holds, const std::string& what) { return complaints_.check(holds, piece_.mark + ": " + what); }

  void checkCells() {
    check(connected(piece_.cells), "its cells do not hang together");
    check(std::is_sorted(piece_.cells.begin(), piece_.cells.end(),
                         [](const Cell& a, const Cell& b) {
                           return a.left != b.left ? a.left < b.left
                                                   : a.bottomLeft + a.bottomRight < b.bottomLeft + b.bottomRight;
                         }),
          "cells out of order");
    Area sum;
    for (const Cell& cell : piece_.cells) {
      sum += cell.area();
      // Where lines cross, rounding may leave some nanometres between them: that is no metal, and must not lengthen a
      // blank.
      const Length thickest = std::max(cell.topLeft - cell.bottomLeft, cell.topRight - cell.bottomRight);
      check(thickest > Length::nanometres(12),
            "a sliver of rounding from u " + text(cell.left) + " to " + text(cell.right));
    }
    check(sum == piece_.area, "area is not its cells' area");
  }

  void checkExtents() {
    Length left = piece_.cells.front().left, right = left;
    Length bottom = piece_.cells.front().bottomLeft, top = bottom;
    for (const Cell& cell : piece_.cells) {
      left = std::min(left, cell.left);
      right = std::max(right, cell.right);
      bottom = std::min({bottom, cell.bottomLeft, cell.bottomRight});
      top = std::max({top, cell.topLeft, cell.topRight});
    }
    check(piece_.left == left && piece_.right == right, "extent in u is not its cells'");
    check(piece_.bottom == bottom && piece_.top == top, "lowest or highest z is not its cells'");
    check(left >= module_.metalLeft && right <= module_.metalRight, "wider than its sheet");
  }

  void checkTopEdge() {
    const std::vector<TopPart> parts = topEdge(piece_);
    Length low = parts.front().zLeft, high = low, peak = parts.front().left;
    const bool onward = wall_.layout.direction.hand == Hand::LeftToRight;
    for (const TopPart& part : parts) {
      low = std::min({low, part.zLeft, part.zRight});
      high = std::max({high, part.zLeft, part.zRight});
    }
    bool found = false;
    for (const TopPart& part : parts) {
      for (const auto& [u, z] : {std::pair(part.left, part.zLeft), std::pair(part.right, part.zRight)}) {
        if (z != high) continue;
        if (!found || (onward ? u < peak : u > peak)) peak = u;
        found = true;
      }
    }
    check(piece_.lowEdge == low && piece_.highEdge == high, "top edge from z " + text(piece_.lowEdge) + " to " +
                                                                text(piece_.highEdge) + ", its cells say " + text(low) +
                                                                " to " + text(high));
    check(piece_.leftEdge == parts.front().zLeft && piece_.rightEdge == parts.back().zRight, "ends of its top edge");
    check(piece_.peak == peak, "peak at u " + text(piece_.peak) + ", its cells say " + text(peak));
  }

  // A part of its top edge lies on a sloped part of the wall's top.
  bool onRake() const {
    const StatedLine& top = wall_.face.top;
    return std::any_of(piece_.cells.begin(), piece_.cells.end(), [&](const Cell& cell) {
      const Slab slab{nm(cell.left), nm(cell.right)};
      if (slab.over(top).level() || cell.topLeft == cell.topRight) return false;
      return SlabParts(runGeometry(), slab, {}).clipped(top) == Heights{nm(cell.topLeft), nm(cell.topRight)};
    });
  }

  const RunGeometry& runGeometry() const { return wall_.runs[static_cast<std::size_t>(piece_.run)]; }

  bool besideCut() const {
    return std::any_of(wall_.cuts.begin(), wall_.cuts.end(), [&](const StatedCut& cut) {
      return std::any_of(piece_.cells.begin(), piece_.cells.end(),
                         [&](const Cell& cell) { return touches(cell, cut); });
    });
  }

  // Its top or its bottom jumps, as at a step of the wall's.
  bool stepped() const {
    const std::vector<TopPart> parts = topEdge(piece_);
    for (std::size_t i = 1; i < parts.size(); ++i) {
      if (parts[i - 1].right == parts[i].left && parts[i - 1].zRight != parts[i].zLeft) return true;
    }
    for (std::size_t i = 1; i < parts.size(); ++i) {
      if (lowestOf(parts[i - 1].left).second != lowestOf(parts[i].left).first) return true;
    }
    return false;
  }

  // The bottom edge between two breaks, at its left and its right end.
  std::pair<Length, Length> lowestOf(Length left) const {
    std::optional<std::pair<Length, Length>> low;
    for (const Cell& cell : piece_.cells) {
      const bool lower = !low || cell.bottomLeft + cell.bottomRight < low->first + low->second;
      if (cell.left == left && lower) low = {cell.bottomLeft, cell.bottomRight};
    }
    return *low;
  }

  bool touches(const Cell& cell, const StatedCut& cut) const {
    const Slab slab{nm(cell.left), nm(cell.right)};
    if (cut.left <= slab.left && slab.right <= cut.right) {
      const SlabParts parts(runGeometry(), slab, {});
      // Where the edge is the band's limit, it would be there without the opening.
      const Heights top{nm(cell.topLeft), nm(cell.topRight)}, bottom{nm(cell.bottomLeft), nm(cell.bottomRight)};
      return (!cut.reachesFloor && parts.clipped(cut.lower) == top && top != parts.high()) ||
             (parts.clipped(cut.upper) == bottom && bottom != parts.low());
    }
    if (!cut.straight) return false;
    // An edge of the sheet itself that happens to lie on the cut line is not cut.
    const bool ownLeft = cell.left == module_.metalLeft, ownRight = cell.right == module_.metalRight;
    const auto beside = [&](Length bottom, Length top) {
      return std::max(nm(bottom), cut.low()) < std::min(nm(top), cut.high());
    };
    return (!ownRight && slab.right == cut.left && beside(cell.bottomRight, cell.topRight)) ||
           (!ownLeft && slab.left == cut.right && beside(cell.bottomLeft, cell.topLeft));
  }

  void checkFlags() {
    // A sheet cut lengthwise, at a corner or along an opening, is a rip.
    check(piece_.rip == (piece_.right - piece_.left < profile_.metalWidth()), "rip or not");
    check(piece_.rake == onRake(), "rake or not");
    const bool beside = besideCut() || stepped(), cut = piece_.notched || piece_.above || piece_.below;
    check(!cut || beside, "notched, above or below, but beside no opening and no step");
    check(!beside || cut || piece_.rip, "beside an opening or a step, but neither notched, above, below nor a rip");
    const int flags = piece_.rip + piece_.rake + piece_.notched + piece_.above + piece_.below;
    PieceKind kind = PieceKind::Full;
    if (piece_.rip) kind = PieceKind::Rip;
    if (piece_.rake) kind = PieceKind::Rake;
    if (piece_.notched) kind = PieceKind::Notched;
    if (piece_.above) kind = PieceKind::Above;
    if (piece_.below) kind = PieceKind::Below;
    if (flags > 1) kind = PieceKind::Mixed;
    check(piece_.kind == kind, "kind is not what its flags say");
    const bool onward = wall_.layout.direction.hand == Hand::LeftToRight;
    const bool reachesLeft = piece_.left == module_.metalLeft, reachesRight = piece_.right == module_.metalRight;
    const bool starting = onward ? reachesLeft : reachesRight, leading = onward ? reachesRight : reachesLeft;
    check(!piece_.startingEdgeFactory || (starting && !module_.startRipped), "starting edge cannot be the factory's");
    check(!piece_.leadingEdgeFactory || (leading && !module_.leadRipped), "leading edge cannot be the factory's");
  }

  void checkBlank() {
    const bool inPlace = piece_.rake && wall_.wall.rakeCut == RakeCut::InPlace;
    Nm needed = nm(piece_.top - piece_.bottom);
    if (inPlace) needed += nm(wall_.job.settings.rakeAllowance);
    const Nm blank = nm(piece_.blankLength), step = nm(profile_.lengths.increment);
    check(blank >= needed && blank - needed < step && blank % step == 0, "blank " + text(piece_.blankLength) + " for " +
                                                                             std::to_string(needed) + " in steps of " +
                                                                             std::to_string(step));
  }

  const CheckedWall& wall_;
  const Piece& piece_;
  const SheetRun& run_;
  const Module& module_;
  const Profile& profile_;
  Complaints& complaints_;
};

bool anyAdjoin(const Piece& a, const Piece& b) {
  return std::any_of(a.cells.begin(), a.cells.end(), [&](const Cell& cell) {
    return std::any_of(b.cells.begin(), b.cells.end(), [&](const Cell& other) { return adjoin(cell, other); });
  });
}

}  // namespace

void checkPieces(const CheckedWall& wall, Complaints& complaints) {
  const std::vector<Piece>& pieces = wall.layout.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (!complaints.check(!pieces[i].cells.empty(), pieces[i].mark + " has no cells")) continue;
    PieceCheck(wall, pieces[i], complaints).all();
    for (std::size_t j = i + 1; j < pieces.size() && j < i + 40; ++j) {
      const bool sameSheet = pieces[i].run == pieces[j].run && pieces[i].module == pieces[j].module;
      if (!sameSheet || pieces[i].tier != pieces[j].tier) continue;
      complaints.check(!anyAdjoin(pieces[i], pieces[j]), pieces[i].mark + " and " + pieces[j].mark + " are one piece");
    }
  }
}

}  // namespace ribwright::fuzz
