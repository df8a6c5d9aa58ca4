#include "core/takeoff/shared_blanks.h"

#include "core/job/by_id.h"

namespace ribwright {

std::vector<NumberedBlank> sharedBlanks(const Job& job, const std::vector<const WallLayout*>& layouts,
                                        const SheetOrder& order) {
  std::vector<NumberedBlank> all;
  for (std::size_t i = 0; i < order.blanks.size(); ++i) {
    const Blank& blank = order.blanks[i];
    if (blank.parts.size() < 2) continue;
    NumberedBlank& numbered = all.emplace_back();
    numbered.number = static_cast<int>(all.size());
    numbered.line = order.lines[static_cast<std::size_t>(order.places[i].line)].line;
    numbered.blank = blank;
    const bool madeToLength = byId(job.profiles, blank.sheet.profile)->lengths.stocked.empty();
    numbered.cuts = blankCuts(job, layouts, blank, madeToLength ? order.bought(static_cast<int>(i)) : blank.length);
    for (const BlankPart& part : blank.parts) {
      const WallLayout& layout = *layouts[static_cast<std::size_t>(part.piece.wall)];
      numbered.marks.push_back(layout.pieces[static_cast<std::size_t>(part.piece.piece)].mark);
    }
  }
  return all;
}

}  // namespace ribwright
