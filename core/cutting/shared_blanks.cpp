#include "core/cutting/shared_blanks.h"

#include "core/cutting/bought_length.h"
#include "core/cutting/share_blanks.h"
#include "core/job/by_id.h"

namespace ribwright {

std::vector<NumberedBlank> sharedBlanks(const Job& job, const std::vector<const WallLayout*>& layouts) {
  std::vector<NumberedBlank> all;
  for (Blank& blank : shareBlanks(job, layouts)) {
    if (blank.parts.size() < 2) continue;
    NumberedBlank& numbered = all.emplace_back();
    numbered.number = static_cast<int>(all.size());
    const Length bought = boughtLength(byId(job.profiles, blank.sheet.profile)->lengths, blank.length);
    numbered.cuts = blankCuts(job, layouts, blank, bought);
    for (const BlankPart& part : blank.parts) {
      const WallLayout& layout = *layouts[static_cast<std::size_t>(part.piece.wall)];
      numbered.marks.push_back(layout.pieces[static_cast<std::size_t>(part.piece.piece)].mark);
    }
    numbered.blank = std::move(blank);
  }
  return all;
}

}  // namespace ribwright
