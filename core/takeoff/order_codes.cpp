#include "core/takeoff/order_codes.h"

#include <map>

#include "core/takeoff/cut_shape.h"

namespace ribwright {
namespace {

// 0: a ... 25: z, 26: aa, 27: ab ...
std::string shapeLetters(int shape) {
  std::string letters;
  for (int left = shape; left >= 0; left = left / 26 - 1)
    letters.insert(letters.begin(), static_cast<char>('a' + left % 26));
  return letters;
}

// Nothing is cut: a whole sheet, as long as it is bought.
bool isWhole(const SheetOrder& order, const BlankPlace& place, const Piece& piece) {
  const OrderedSheet& sheet = order.sheets[static_cast<std::size_t>(place.sheet)];
  const Length bought = order.lines[static_cast<std::size_t>(place.line)].length;
  return sheet.blanks.size() == 1 && order.blanks[static_cast<std::size_t>(sheet.blanks.front())].parts.size() == 1 &&
         isUncut(piece, bought);
}

}  // namespace

std::vector<std::vector<std::string>> orderCodes(const SheetOrder& order,
                                                 const std::vector<const WallLayout*>& layouts) {
  std::vector<std::map<CutShape, int>> shapes(order.lines.size());  // of each line, in order of first appearance
  std::vector<std::vector<std::string>> codes;
  for (std::size_t wall = 0; wall < layouts.size(); ++wall) {
    const WallLayout& layout = *layouts[wall];
    std::vector<std::string>& mine = codes.emplace_back();
    mine.reserve(layout.pieces.size());
    for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
      const Piece& piece = layout.pieces[i];
      const BlankPlace& place = order.places[static_cast<std::size_t>(order.blankOf[wall][i])];
      std::string& code = mine.emplace_back(std::to_string(place.line + 1));
      if (isWhole(order, place, piece)) continue;
      const Module& module =
          layout.runs[static_cast<std::size_t>(piece.run)].modules[static_cast<std::size_t>(piece.module)];
      auto& known = shapes[static_cast<std::size_t>(place.line)];
      const auto shape = known.emplace(cutShape(piece, module, layout.direction.hand), static_cast<int>(known.size()));
      code += shapeLetters(shape.first->second);
    }
  }
  return codes;
}

}  // namespace ribwright
