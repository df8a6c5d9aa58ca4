// Waste by what is no metal of a sheet: beside and beyond what its parts take, and in each part's room below and above
// its metal where no opening took it.
#include <algorithm>
#include <map>

#include "tests/fuzz/order_checker.h"

namespace ribwright::fuzz {
namespace {

struct SheetRoom {
  Area waste, cutOuts;
};

// Whether a place lies in an opening's or penetration's cut.
const CutRegion* cutAt(const WallLayout& layout, const Cell& column, Length z) {
  const Length u = column.left + half(column.right - column.left);
  for (const CutRegion& cut : layout.cuts) {
    if (u < cut.left || u >= cut.right) continue;
    const bool above = cut.reachesFloor || cut.lower.heightAt(u, Beside::Right) < z;
    if (above && z < cut.upper.heightAt(u, Beside::Right)) return &cut;
  }
  return nullptr;
}

Length middle(Length left, Length right) { return left + half(right - left); }

// Below the lowest metal of a column (`up` = -1) or above its highest.
SheetRoom beyond(const WallLayout& layout, const Piece& piece, const Cell& cell, int up) {
  const Length left = up > 0 ? cell.topLeft : cell.bottomLeft, right = up > 0 ? cell.topRight : cell.bottomRight;
  const Length end = up > 0 ? piece.top : piece.bottom, width = cell.right - cell.left;
  const auto between = [&](Length l, Length r) {
    return up > 0 ? Area::trapezoid(l - left, r - right, width) : Area::trapezoid(left - l, right - r, width);
  };
  SheetRoom room{between(end, end), {}};
  const Length beside = middle(left, right) + Length::nanometres(100) * up;
  const CutRegion* cut = cutAt(layout, cell, beside);
  if (!cut || room.waste == Area()) return room;
  const SheetRun& run = layout.runs[std::size_t(piece.run)];
  const HeightLine& wall = up > 0 ? run.top : run.bottom;
  // A crossing is rounded, so that the wall's line may lie a few nanometres within the metal.
  const auto reach = [&](Length u, Beside side) {
    const Length line = wall.heightAt(u, side), metal = side == Beside::Right ? left : right;
    if (up > 0) return std::max(metal, std::min({piece.top, cut->top, line}));
    return std::min(metal, std::max({piece.bottom, cut->reachesFloor ? piece.bottom : cut->bottom, line}));
  };
  room.cutOuts = between(reach(cell.left, Beside::Right), reach(cell.right, Beside::Left));
  room.waste = room.waste - room.cutOuts;
  return room;
}

// What of a piece's own rectangle is no metal.
SheetRoom roomOf(const WallLayout& layout, const Piece& piece) {
  SheetRoom all;
  const auto add = [&](const SheetRoom& room) {
    all.waste += room.waste;
    all.cutOuts += room.cutOuts;
  };
  std::map<Length, std::vector<Cell>> columns;
  for (const Cell& cell : piece.cells) columns[cell.left].push_back(cell);
  for (auto& [left, cells] : columns) {
    add(beyond(layout, piece, cells.front(), -1));
    add(beyond(layout, piece, cells.back(), 1));
    Area within = Area::trapezoid(cells.back().topLeft - cells.front().bottomLeft,
                                  cells.back().topRight - cells.front().bottomRight, cells[0].right - cells[0].left);
    for (const Cell& cell : cells) within = within - cell.area();
    all.cutOuts += within;
  }
  return all;
}

Area wasteOf(const CheckedOrder& checked, const OrderedSheet& sheet, Area& cutOuts) {
  const OrderLine& line = checked.lineOf(sheet);
  const Length kerf = checked.job.settings.kerf;
  Area waste;
  for (const int blank : sheet.blanks) {
    Length end;
    for (const BlankPart& part : checked.blank(blank).parts) {
      const Piece& piece = checked.piece(part.piece);
      const WallLayout& layout = *checked.layouts[std::size_t(part.piece.wall)];
      const SheetRoom room = roomOf(layout, piece);
      waste += room.waste;
      cutOuts += room.cutOuts;
      waste += line.metalWidth * (part.from - end);                                              // the kerf before it
      waste += (line.metalWidth - (piece.right - piece.left)) * (part.to - part.from);           // beside it
      waste += (piece.right - piece.left) * (part.to - part.from - (piece.top - piece.bottom));  // allowance, steps
      end = part.to;
    }
    waste += line.metalWidth * (checked.blank(blank).length - end);
  }
  waste += line.metalWidth * kerf * (int(sheet.blanks.size()) - 1);
  const Length rest = line.length - sheet.used;
  waste += line.metalWidth * (sheet.drop > Length() ? kerf : rest);
  return waste;
}

bool addsUp(const SteelAccount& a) {
  return a.bought == a.pieces + a.cutOuts + a.drops + a.waste + a.spares && a.waste >= Area() && a.cutOuts >= Area();
}

template <class Map>
bool partsAddUp(const Map& parts, const SteelAccount& total) {
  SteelAccount sum;
  for (const auto& [key, part] : parts) sum += part;
  return addsUp(sum) && sum.bought == total.bought && sum.waste == total.waste && sum.pieces == total.pieces &&
         sum.cutOuts == total.cutOuts && sum.drops == total.drops && sum.spares == total.spares;
}

}  // namespace

void checkAccount(const CheckedOrder& checked, const OrderAccount& account, Complaints& complaints) {
  Area bought, pieces, waste, cutOuts, drops, spares;
  std::map<std::string, Area> wasteOfWalls;
  for (const OrderedSheet& sheet : checked.order.sheets) {
    const OrderLine& line = checked.lineOf(sheet);
    bought += line.metalWidth * line.length;
    drops += line.metalWidth * sheet.drop;
    const Area one = wasteOf(checked, sheet, cutOuts);
    waste += one;
    wasteOfWalls[checked.layouts[std::size_t(sheet.first.wall)]->letter] += one;
  }
  for (const WallLayout* layout : checked.layouts) {
    for (const SheetRun& run : layout->runs) pieces += run.pieces;
  }
  for (const OrderLine& line : checked.order.lines) spares += line.metalWidth * line.length * line.spares;
  const SteelAccount& total = account.total;
  complaints.check(total.bought == bought + spares, "bought");
  complaints.check(total.pieces == pieces, "pieces are not what the runs account for");
  complaints.check(total.cutOuts == cutOuts, "cut-outs");
  complaints.check(total.drops == drops, "drops kept");
  complaints.check(total.spares == spares, "spares");
  complaints.check(total.waste == waste, "waste");
  complaints.check(addsUp(total), "bought is not pieces, cut-outs, drops, waste and spares");
  complaints.check(partsAddUp(account.classes, total), "by class");
  complaints.check(partsAddUp(account.walls, total), "by wall");
  complaints.check(partsAddUp(account.kinds, total), "by kind");
  for (const auto& [wall, one] : wasteOfWalls)
    complaints.check(account.walls.at(wall).waste == one, "waste of " + wall);
  SteelAccount lines;
  for (const SteelAccount& line : account.lines) lines += line;
  complaints.check(lines.bought == total.bought && lines.waste == total.waste, "by line");
}

}  // namespace ribwright::fuzz
