#include "core/takeoff/sheet_needs.h"

#include <algorithm>

namespace ribwright {
namespace {

bool hangs(const PieceRef& ref, const std::vector<const WallLayout*>& layouts) {
  const WallLayout& layout = *layouts[static_cast<std::size_t>(ref.wall)];
  const Piece& piece = layout.pieces[static_cast<std::size_t>(ref.piece)];
  return layout.runs[static_cast<std::size_t>(piece.run)].modules[static_cast<std::size_t>(piece.module)].hung;
}

bool hangs(const OrderedSheet& sheet, const SheetOrder& order, const std::vector<const WallLayout*>& layouts) {
  return std::any_of(sheet.blanks.begin(), sheet.blanks.end(), [&](int blank) {
    const auto& parts = order.blanks[static_cast<std::size_t>(blank)].parts;
    return std::any_of(parts.begin(), parts.end(), [&](const BlankPart& part) { return hangs(part.piece, layouts); });
  });
}

}  // namespace

std::vector<SheetNeed> sheetNeeds(const SheetOrder& order, const std::vector<const WallLayout*>& layouts) {
  std::vector<SheetNeed> needs;
  for (const OrderLine& line : order.lines) {
    const SheetKind kind{line.sheet(), line.length};
    for (int i = 0; i < line.hung(); ++i) {
      const OrderedSheet& sheet = order.sheets[static_cast<std::size_t>(line.firstSheet + i)];
      needs.push_back({kind, sheet.used, line.marks[static_cast<std::size_t>(i)], hangs(sheet, order, layouts)});
    }
    needs.insert(needs.end(), static_cast<std::size_t>(line.spares), SheetNeed{kind, line.length, "", false});
  }
  return needs;
}

}  // namespace ribwright
