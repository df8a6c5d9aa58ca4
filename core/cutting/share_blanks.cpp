#include "core/cutting/share_blanks.h"

#include <algorithm>

namespace ribwright {
namespace {

Blank aloneOf(const Job& job, const WallLayout& layout, const PieceRef& ref) {
  const Piece& piece = layout.pieces.at(static_cast<std::size_t>(ref.piece));
  const SheetRun& run = layout.runs.at(static_cast<std::size_t>(piece.run));
  const Module& module = run.modules.at(static_cast<std::size_t>(piece.module));
  const bool rightToLeft = layout.direction.hand == Hand::RightToLeft;
  Blank blank;
  blank.sheet = sheetClassOf(job, layout, piece);
  blank.length = piece.blankLength;
  BlankPart part;
  part.piece = ref;
  part.upsideDown = rightToLeft;
  part.left = rightToLeft ? module.startLine - piece.right : piece.left - module.startLine;
  part.right = rightToLeft ? module.startLine - piece.left : piece.right - module.startLine;
  part.to = piece.blankLength;
  blank.parts = {part};
  return blank;
}

}  // namespace

std::vector<Blank> shareBlanks(const Job& job, const std::vector<const WallLayout*>& layouts) {
  std::vector<Blank> blanks;
  for (std::size_t wall = 0; wall < layouts.size(); ++wall) {
    for (std::size_t piece = 0; piece < layouts[wall]->pieces.size(); ++piece)
      blanks.push_back(aloneOf(job, *layouts[wall], {static_cast<int>(wall), static_cast<int>(piece)}));
  }
  std::stable_sort(blanks.begin(), blanks.end(), [](const Blank& a, const Blank& b) { return a.sheet < b.sheet; });
  return blanks;
}

}  // namespace ribwright
