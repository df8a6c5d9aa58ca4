#include "core/layout/pieces.h"

#include <algorithm>
#include <numeric>

#include "core/layout/outline.h"

namespace ribwright {

namespace {

// Which cells hang together through edges of positive length.
class Groups {
 public:
  explicit Groups(std::size_t count) : above_(count) { std::iota(above_.begin(), above_.end(), std::size_t(0)); }
  std::size_t of(std::size_t i) {
    while (above_[i] != i) i = above_[i] = above_[above_[i]];
    return i;
  }
  void join(std::size_t a, std::size_t b) {
    const std::size_t x = of(a), y = of(b);
    above_[std::max(x, y)] = std::min(x, y);
  }

 private:
  std::vector<std::size_t> above_;
};

bool touch(const RunCell& left, const RunCell& right) {
  const Length low = std::max(left.cell.bottomRight, right.cell.bottomLeft);
  return std::min(left.cell.topRight, right.cell.topLeft) > low;
}

// One cell in each column, each touching the next: the ordinary sheet.
bool isOnePiece(const std::vector<RunCell>& cells) {
  for (std::size_t i = 1; i < cells.size(); ++i) {
    if (cells[i].column != cells[i - 1].column + 1 || !touch(cells[i - 1], cells[i])) return false;
  }
  return true;
}

std::vector<std::vector<RunCell>> connected(const std::vector<RunCell>& cells) {
  Groups groups(cells.size());
  std::size_t from = 0, to = 0;  // cells of the column before
  for (std::size_t i = 0; i < cells.size();) {
    std::size_t end = i;
    while (end < cells.size() && cells[end].column == cells[i].column) ++end;
    const bool besides = to > from && cells[from].column + 1 == cells[i].column;
    for (std::size_t right = i; besides && right < end; ++right) {
      for (std::size_t left = from; left < to; ++left) {
        if (touch(cells[left], cells[right])) groups.join(left, right);
      }
    }
    from = i;
    to = end;
    i = end;
  }
  std::vector<std::vector<RunCell>> parts(cells.size());
  for (std::size_t i = 0; i < cells.size(); ++i) parts[groups.of(i)].push_back(cells[i]);
  std::erase_if(parts, [](const auto& part) { return part.empty(); });
  return parts;
}

bool isOwnEnd(EdgeSource::Kind kind) {
  return kind == EdgeSource::Kind::Bottom || kind == EdgeSource::Kind::Floor || kind == EdgeSource::Kind::LapEnd ||
         kind == EdgeSource::Kind::Top || kind == EdgeSource::Kind::Ceiling || kind == EdgeSource::Kind::LapTop;
}

// What the columns of a piece say about its two ends.
struct Ends {
  bool everOwnBottom = false, everCutBottom = false, everOwnTop = false, everCutTop = false;
  bool bottomsLevel = true, topsLevel = true;  // all at one height
  bool sloped = false;                         // part of its top is on a slope of the wall's top
  bool broken = false;                         // a gap within or between columns, or a step in an end
};

// More apart than the rounding of a crossing could be.
bool apart(Length a, Length b) { return a - b > kRounding || b - a > kRounding; }

Ends endsOf(const std::vector<RunCell>& cells) {
  Ends ends;
  const RunCell* last = nullptr;  // top cell of the column before
  for (std::size_t i = 0; i < cells.size();) {
    std::size_t end = i;
    while (end < cells.size() && cells[end].column == cells[i].column) ++end;
    const RunCell& low = cells[i];
    const RunCell& high = cells[end - 1];
    (isOwnEnd(low.below.kind) ? ends.everOwnBottom : ends.everCutBottom) = true;
    (isOwnEnd(high.above.kind) ? ends.everOwnTop : ends.everCutTop) = true;
    ends.bottomsLevel = ends.bottomsLevel && !apart(low.cell.bottomLeft, cells.front().cell.bottomLeft) &&
                        !apart(low.cell.bottomRight, cells.front().cell.bottomLeft);
    const Length firstTop = last == nullptr  ? high.cell.topLeft
                            : ends.topsLevel ? last->cell.topRight
                                             : high.cell.topLeft;
    ends.topsLevel = ends.topsLevel && !apart(high.cell.topLeft, firstTop) && !apart(high.cell.topRight, firstTop);
    ends.sloped = ends.sloped || (high.above.kind == EdgeSource::Kind::Top && !high.above.level);
    ends.broken = ends.broken || end - i > 1;
    if (last)
      ends.broken = ends.broken || last->column + 1 != high.column || apart(last->cell.topRight, high.cell.topLeft);
    last = &high;
    i = end;
  }
  return ends;
}

void judge(Piece& piece, const Ends& ends) {
  piece.rip = !piece.startingEdgeFactory || !piece.leadingEdgeFactory;
  piece.rake = ends.sloped;
  piece.above = !ends.everOwnBottom;
  piece.below = !ends.everOwnTop;
  const bool mixedEnds = (ends.everOwnBottom && ends.everCutBottom) || (ends.everOwnTop && ends.everCutTop);
  const bool cutTopNotLevel = piece.below && !ends.topsLevel;
  piece.notched = ends.broken || mixedEnds || !ends.bottomsLevel || cutTopNotLevel;
  piece.lowerEndFactory = ends.bottomsLevel;
  piece.kind = kindOf(piece);
}

void measure(Piece& piece, const std::vector<RunCell>& cells, const RunModule& module, const HangingFrame& frame) {
  Length from = cells.front().cell.left, to = cells.back().cell.right;
  piece.bottom = cells.front().cell.bottomLeft;
  piece.top = cells.front().cell.topLeft;
  Length peak;
  bool first = true;
  Length startEdge, leadEdge;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell& cell = cells[i].cell;
    piece.bottom = std::min({piece.bottom, cell.bottomLeft, cell.bottomRight});
    const bool topOfColumn = i + 1 == cells.size() || cells[i + 1].column != cells[i].column;
    if (!topOfColumn) continue;
    if (first) {
      startEdge = cell.topLeft;
      piece.lowEdge = piece.highEdge = cell.topLeft;
      peak = cell.left;
      first = false;
    }
    piece.lowEdge = std::min({piece.lowEdge, cell.topLeft, cell.topRight});
    if (cell.topLeft > piece.highEdge) peak = cell.left;
    piece.highEdge = std::max(piece.highEdge, cell.topLeft);
    if (cell.topRight > piece.highEdge) peak = cell.right;
    piece.highEdge = std::max(piece.highEdge, cell.topRight);
    leadEdge = cell.topRight;
  }
  piece.top = piece.highEdge;
  piece.startingEdgeFactory = from == module.wholeFrom;
  piece.leadingEdgeFactory = to == module.wholeTo;
  const bool rightward = frame.hand == Hand::LeftToRight;
  piece.left = frame.toFace(rightward ? from : to);
  piece.right = frame.toFace(rightward ? to : from);
  piece.leftEdge = rightward ? startEdge : leadEdge;
  piece.rightEdge = rightward ? leadEdge : startEdge;
  piece.peak = frame.toFace(peak);
}

Cell onFace(const Cell& cell, const HangingFrame& frame) {
  if (frame.hand == Hand::LeftToRight) {
    Cell moved = cell;
    moved.left = frame.toFace(cell.left);
    moved.right = frame.toFace(cell.right);
    return moved;
  }
  return {frame.toFace(cell.right), frame.toFace(cell.left), cell.bottomRight,
          cell.bottomLeft,          cell.topRight,           cell.topLeft};
}

Ring onFace(Ring ring, const HangingFrame& frame) {
  for (FaceVertex& vertex : ring) vertex.u = frame.toFace(vertex.u);
  if (frame.hand == Hand::RightToLeft) std::reverse(ring.begin(), ring.end());
  return ring;
}

Piece pieceOf(const std::vector<RunCell>& cells, const RunModule& module, const HangingFrame& frame,
              const BlankRules& rules) {
  Piece piece;
  measure(piece, cells, module, frame);
  judge(piece, endsOf(cells));
  const Length allowance = piece.rake ? rules.allowance : Length();
  piece.blankLength = roundUp(piece.top - piece.bottom + allowance, rules.increment);
  piece.cells.reserve(cells.size());
  for (const RunCell& cell : cells) {
    piece.area += cell.cell.area();
    piece.cells.push_back(onFace(cell.cell, frame));
  }
  if (frame.hand == Hand::RightToLeft) {
    std::sort(piece.cells.begin(), piece.cells.end(), [](const Cell& a, const Cell& b) {
      return a.left != b.left ? a.left < b.left : a.bottomLeft + a.bottomRight < b.bottomLeft + b.bottomRight;
    });
  }
  for (Ring& ring : outline(cells)) piece.rings.push_back(onFace(std::move(ring), frame));
  return piece;
}

}  // namespace

PieceKind kindOf(const Piece& piece) {
  const int holding = int(piece.rip) + int(piece.rake) + int(piece.notched) + int(piece.above) + int(piece.below);
  if (holding == 0) return PieceKind::Full;
  if (holding > 1) return PieceKind::Mixed;
  if (piece.rip) return PieceKind::Rip;
  if (piece.rake) return PieceKind::Rake;
  if (piece.notched) return PieceKind::Notched;
  return piece.above ? PieceKind::Above : PieceKind::Below;
}

namespace {

std::vector<NotHung> slabsOf(const SheetCells& sheet, const std::vector<RunCell>& cells) {
  std::vector<NotHung> slabs;
  for (const RunCell& cell : cells) {
    for (int slab = cell.firstSlab; slab <= cell.lastSlab; ++slab) {
      slabs.push_back({sheet.module, sheet.tier, cell.column, slab});
    }
  }
  return slabs;
}

std::size_t partsOf(const std::vector<SheetCells>& sheets, int module) {
  std::size_t parts = 0;
  for (const SheetCells& sheet : sheets) {
    if (sheet.module == module) parts += connected(sheet.cells).size();
  }
  return parts;
}

}  // namespace

std::vector<NotHung> needlessPiece(const std::vector<SheetCells>& sheets, const std::vector<RunModule>& modules) {
  for (auto sheet = sheets.rbegin(); sheet != sheets.rend(); ++sheet) {
    const auto isCovered = [](const RunCell& cell) { return cell.alone == Area(); };
    if (std::none_of(sheet->cells.begin(), sheet->cells.end(), isCovered)) continue;
    for (const auto& cells : connected(sheet->cells)) {
      if (!std::all_of(cells.begin(), cells.end(), isCovered)) continue;
      const bool hangs = modules[static_cast<std::size_t>(sheet->module)].hung;
      if (!hangs || partsOf(sheets, sheet->module) > 1) return slabsOf(*sheet, cells);
    }
  }
  return {};
}

std::vector<Piece> piecesOf(const SheetCells& sheet, const RunModule& module, const HangingFrame& frame,
                            const BlankRules& rules) {
  std::vector<Piece> pieces;
  const auto add = [&](const std::vector<RunCell>& cells) {
    pieces.push_back(pieceOf(cells, module, frame, rules));
    pieces.back().tier = sheet.tier;
  };
  if (isOnePiece(sheet.cells)) {
    add(sheet.cells);
    return pieces;
  }
  for (const auto& cells : connected(sheet.cells)) add(cells);
  std::stable_sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) { return a.bottom < b.bottom; });
  return pieces;
}

}  // namespace ribwright
