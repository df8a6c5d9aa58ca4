#include "core/drawing/stacked_sheet.h"

#include <algorithm>

#include "core/job/by_id.h"

namespace ribwright {

StackedSheet stackedSheet(const DrillWall& wall, const DrillBatch& batch) {
  StackedSheet sheet;
  const Piece* widest = nullptr;
  for (const std::int32_t index : batch.pieces) {
    const Piece& piece = wall.piece(index);
    sheet.length = std::max(sheet.length, piece.blankLength);
    if (!widest || piece.right - piece.left > widest->right - widest->left) widest = &piece;
  }
  sheet.width = widest->right - widest->left;
  const SheetRun& run = wall.layout().runs[static_cast<std::size_t>(widest->run)];
  const Module& module = run.modules[static_cast<std::size_t>(widest->module)];
  const bool toRight = wall.layout().direction.hand == Hand::LeftToRight;
  const Length edge = toRight ? widest->left - module.startLine : module.startLine - widest->right;
  const Band& band = wall.wall->bands[static_cast<std::size_t>(run.band)];
  const Profile* profile = byId(wall.job->profiles, band.profile);
  for (const Rib& rib : profile ? sectionOf(*profile).ribs : std::vector<Rib>{}) {
    const Length from = std::max(rib.from - edge, Length()), to = std::min(rib.to - edge, sheet.width);
    if (from < to) sheet.ribs.push_back({from, to});
  }
  return sheet;
}

std::vector<OffsetSet> offsetSets(const DrillBatch& batch) {
  std::vector<OffsetSet> sets;
  for (std::size_t i = 0; i < batch.rows.size(); ++i) {
    const BatchRow& row = batch.rows[i];
    const auto same = std::find_if(sets.begin(), sets.end(), [&](const OffsetSet& set) {
      return set.offsets == row.offsets && set.screw == row.key.screw;
    });
    if (same == sets.end()) {
      sets.push_back({row.offsets, row.key.screw, {i}});
    } else {
      same->rows.push_back(i);
    }
  }
  return sets;
}

std::string rowName(const DrillWall& wall, const BatchRow& row) {
  if (!row.support.empty()) return row.support;
  return wall.say(row.key.kind == HoleKind::Base ? "template.row.base" : "template.row.eave");
}

std::string setLetter(std::size_t index) {
  std::string letters;
  for (++index; index > 0; index = (index - 1) / 26) letters.insert(letters.begin(), char('a' + (index - 1) % 26));
  return letters;
}

}  // namespace ribwright
