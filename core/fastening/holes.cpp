#include "core/fastening/holes.h"

#include <algorithm>

#include "core/fastening/corner_zone.h"
#include "core/fastening/run_screws.h"
#include "core/job/by_id.h"

namespace ribwright {
namespace {

const Profile& profileOf(const Job& job, const Wall& wall, const SheetRun& run) {
  return *byId(job.profiles, wall.bands[static_cast<std::size_t>(run.band)].profile);
}

// By owning piece, then rising, then along the hanging direction.
void sort(const WallLayout& layout, std::vector<Hole>& holes) {
  std::vector<std::size_t> begin(layout.pieces.size() + 1, 0);
  for (const Hole& hole : holes) ++begin[static_cast<std::size_t>(hole.pieces[0]) + 1];
  for (std::size_t i = 0; i + 1 < begin.size(); ++i) begin[i + 1] += begin[i];
  std::vector<Hole> sorted(holes.size());
  std::vector<std::size_t> next(begin.begin(), begin.end() - 1);
  for (const Hole& hole : holes) sorted[next[static_cast<std::size_t>(hole.pieces[0])]++] = hole;
  const bool rightward = layout.direction.hand == Hand::LeftToRight;
  for (std::size_t i = 0; i + 1 < begin.size(); ++i) {
    const auto at = [&](std::size_t k) { return sorted.begin() + static_cast<std::ptrdiff_t>(k); };
    std::sort(at(begin[i]), at(begin[i + 1]), [rightward](const Hole& a, const Hole& b) {
      if (a.z != b.z) return a.z < b.z;
      return rightward ? a.u < b.u : a.u > b.u;
    });
  }
  holes = std::move(sorted);
}

}  // namespace

WallHoles holesOf(const Job& job, const Wall& wall, const WallLayout& layout) {
  WallHoles holes;
  holes.supports = supportsOf(job, wall, layout);
  holes.cornerZone = cornerZone(job, wall, layout.face);
  for (std::size_t run = 0; run < layout.runs.size(); ++run) {
    const Profile& profile = profileOf(job, wall, layout.runs[run]);
    const ChosenPattern chosen = chosenPattern(job, wall, layout.runs[run], profile);
    holes.patterns.push_back(chosen.stated);
    if (!chosen.pattern) continue;
    RunSheets sheets(layout, static_cast<int>(run), profile, wall.endLaps.endBelowRow,
                     holes.cornerZone.value_or(Length()));
    RunScrews screws(job, wall, chosen, std::move(sheets), holes);
    placeRows(screws, layout);
    placeJambs(screws, layout);
    placeStitches(screws, layout);
  }
  sort(layout, holes.holes);
  std::sort(holes.unstated.begin(), holes.unstated.end());
  return holes;
}

Length alongSheet(const WallLayout& layout, const Hole& hole, int sheet) {
  const Piece& piece = layout.pieces[static_cast<std::size_t>(hole.pieces[static_cast<std::size_t>(sheet)])];
  const SheetRun& run = layout.runs[static_cast<std::size_t>(piece.run)];
  const Length line = run.modules[static_cast<std::size_t>(piece.module)].startLine;
  return layout.direction.hand == Hand::LeftToRight ? hole.u - line : line - hole.u;
}

}  // namespace ribwright
