#include "core/takeoff/cost_shares.h"

namespace ribwright {
namespace {

constexpr std::int64_t sharesOfOne = 1'000'000'000;

CostKind costKindOf(const Piece& piece) {
  switch (piece.kind) {
    case PieceKind::Full:
      return CostKind::Full;
    case PieceKind::Rip:
      return CostKind::Rip;
    case PieceKind::Rake:
      return CostKind::Rake;
    case PieceKind::Notched:
      return CostKind::Notched;
    case PieceKind::Above:
      return CostKind::Above;
    case PieceKind::Below:
      return CostKind::Below;
    case PieceKind::Mixed:
      break;
  }
  return CostKind::Mixed;
}

struct Part {
  CostCell cell;
  Int128 size = 0;
};

void share(Int128 of, const std::vector<Part>& parts, CostShares& shares) {
  if (parts.empty()) return;
  std::vector<Int128> sizes;
  for (const Part& part : parts) sizes.push_back(part.size);
  const auto divided = apportioned(Money::cents(static_cast<std::int64_t>(of)), sizes);
  for (std::size_t i = 0; i < parts.size(); ++i) shares[parts[i].cell] += divided[i].cents();
}

// The pieces that come out of a sheet, as large as they are.
std::vector<Part> partsOf(const OrderedSheet& sheet, const SheetOrder& order,
                          const std::vector<const WallLayout*>& layouts) {
  std::vector<Part> parts;
  for (const int blank : sheet.blanks) {
    for (const BlankPart& part : order.blanks[static_cast<std::size_t>(blank)].parts) {
      const WallLayout& layout = *layouts[static_cast<std::size_t>(part.piece.wall)];
      const Piece& piece = layout.pieces[static_cast<std::size_t>(part.piece.piece)];
      parts.push_back({{layout.letter, costKindOf(piece)}, piece.area.halfSquareNanometres()});
    }
  }
  return parts;
}

// Alike in size and kind: cuts are of what they part.
std::vector<Part> evenly(std::vector<Part> parts) {
  for (Part& part : parts) part = {{part.cell.first, CostKind::Cut}, 1};
  return parts;
}

std::int64_t counted(std::size_t size) { return static_cast<std::int64_t>(size); }

bool isOffTheShelf(const OrderLine& line, const SheetOrder& order) {
  return std::any_of(order.shelfCuts.begin(), order.shelfCuts.end(),
                     [&](const ShelfCut& cut) { return cut.sheet == line.sheet(); });
}

}  // namespace

std::vector<CostShares> sheetShares(const SheetOrder& order, const std::vector<const WallLayout*>& layouts) {
  std::vector<CostShares> lines(order.lines.size());
  for (const OrderedSheet& sheet : order.sheets)
    share(sharesOfOne, partsOf(sheet, order, layouts), lines[static_cast<std::size_t>(sheet.line)]);
  return lines;
}

std::int64_t cutsOf(const OrderedSheet& sheet, const SheetOrder& order) {
  std::int64_t cuts = counted(sheet.blanks.size()) - 1;
  for (const int blank : sheet.blanks) cuts += counted(order.blanks[static_cast<std::size_t>(blank)].parts.size()) - 1;
  const OrderLine& line = order.lines[static_cast<std::size_t>(sheet.line)];
  return cuts + (isOffTheShelf(line, order) && line.length > sheet.used ? 1 : 0);
}

std::int64_t cutsOf(const TrimStick& stick) {
  return counted(stick.cuts.size()) - 1 + (stick.drop + stick.waste > Length() ? 1 : 0);
}

CutShares cutShares(const SheetOrder& order, const std::vector<const WallLayout*>& layouts, const CutTrim& trim) {
  CutShares all;
  for (const OrderedSheet& sheet : order.sheets) {
    const std::int64_t cuts = cutsOf(sheet, order);
    all.cuts += cuts;
    share(Int128(cuts) * sharesOfOne, evenly(partsOf(sheet, order, layouts)), all.shares);
  }
  for (const TrimBatch& batch : trim.batches) {
    for (const TrimStick& stick : batch.sticks) {
      const std::int64_t cuts = batch.madeToLength ? 0 : cutsOf(stick);
      std::vector<Part> parts;
      for (const TrimCut& cut : stick.cuts)
        parts.push_back({{trim.takeoff.pieces[static_cast<std::size_t>(cut.piece)].place.wall, CostKind::Cut}, 1});
      all.cuts += cuts;
      share(Int128(cuts) * sharesOfOne, parts, all.shares);
    }
  }
  return all;
}

void divide(Money money, const CostShares& shares, CostKind kind, std::map<CostCell, Money>& cells) {
  if (money == Money()) return;
  std::vector<CostCell> names;
  std::vector<Int128> sizes;
  for (const auto& [cell, size] : shares) {
    if (size == 0) continue;
    names.push_back(cell);
    sizes.push_back(size);
  }
  if (names.empty()) {
    cells[{"", kind}] += money;
    return;
  }
  const auto parts = apportioned(money, sizes);
  for (std::size_t i = 0; i < parts.size(); ++i) cells[names[i]] += parts[i];
}

CostShares byWall(const CostShares& shares, CostKind kind) {
  CostShares walls;
  for (const auto& [cell, size] : shares) walls[{cell.first, kind}] += size;
  return walls;
}

}  // namespace ribwright
