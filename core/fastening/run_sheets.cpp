#include "core/fastening/run_sheets.h"

#include <algorithm>

namespace ribwright {

RunSheets::RunSheets(const WallLayout& layout, int run, const Profile& profile, Length endBelowRow, Length cornerZone)
    : run_(&layout.runs[static_cast<std::size_t>(run)]),
      profile_(&profile),
      index_(run),
      frame_{run_->left, run_->right, layout.direction.hand},
      crowns_(stitchSeats(profile)) {
  const bool rightward = frame_.hand == Hand::LeftToRight;
  const Length width = layout.face.width;
  for (const Module& module : run_->modules) {
    StandingSheet sheet;
    sheet.line = frame_.toHanging(module.startLine);
    sheet.lead = frame_.toHanging(module.leadLine);
    sheet.from = frame_.toHanging(rightward ? module.metalLeft : module.metalRight);
    sheet.to = frame_.toHanging(rightward ? module.metalRight : module.metalLeft);
    const Length left = std::min(module.startLine, module.leadLine),
                 right = std::max(module.startLine, module.leadLine);
    const bool atCorner = (left < cornerZone && right > Length()) || (right > width - cornerZone && left < width);
    sheet.corner = cornerZone > Length() && atCorner;
    inOrder_ = inOrder_ && (sheets_.empty() || (sheets_.back().from < sheet.from && sheets_.back().to < sheet.to));
    sheets_.push_back(std::move(sheet));
  }
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const Piece& piece = layout.pieces[i];
    if (piece.run != run) continue;
    StandingSheet& sheet = sheets_[static_cast<std::size_t>(piece.module)];
    sheet.pieces.push_back(sheetMetal(layout, static_cast<std::int32_t>(i)));
    const bool lapped = std::find(run_->lapEnds.begin(), run_->lapEnds.end(), piece.bottom) != run_->lapEnds.end();
    if (lapped) sheet.lapRows.push_back(piece.bottom + endBelowRow);
  }
}

std::pair<std::size_t, std::size_t> RunSheets::beside(std::size_t module, Length reach) const {
  if (!inOrder_) return {0, sheets_.size() - 1};
  std::size_t first = module, last = module;
  while (first > 0 && sheets_[first - 1].to + reach > sheets_[module].from) --first;
  while (last + 1 < sheets_.size() && sheets_[last + 1].from - reach < sheets_[module].to) ++last;
  return {first, last};
}

std::size_t RunSheets::firstBeyond(Length t) const {
  if (!inOrder_) return 0;
  const auto sheet = std::upper_bound(sheets_.begin(), sheets_.end(), t,
                                      [](Length at, const StandingSheet& other) { return at < other.to; });
  return static_cast<std::size_t>(sheet - sheets_.begin());
}

const std::vector<Flat>& RunSheets::seats(Length washer) {
  const auto known = seats_.find(washer);
  if (known != seats_.end()) return known->second;
  return seats_.emplace(washer, structuralSeats(*profile_, washer)).first->second;
}

}  // namespace ribwright
