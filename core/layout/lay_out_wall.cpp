#include "core/layout/lay_out_wall.h"

#include <algorithm>
#include <iterator>

#include "core/job/by_id.h"
#include "core/layout/cut_regions.h"
#include "core/layout/hang_direction.h"
#include "core/layout/start_search.h"

namespace ribwright {

namespace {

// u limits of the runs, left to right: corners and expansion joints on the wall.
std::vector<Length> runLimits(const Wall& wall, Length width) {
  std::vector<Length> limits = {Length(), width};
  for (const Length joint : wall.expansionJoints) {
    if (joint > Length() && joint < width) limits.push_back(joint);
  }
  std::sort(limits.begin(), limits.end());
  limits.erase(std::unique(limits.begin(), limits.end()), limits.end());
  return limits;
}

struct Work {
  const Job& job;
  const Wall& wall;
  WallLayout& layout;
  int nextNumber = 1;

  void layOut(const HangingFrame& frame, int band) {
    const Band& stated = wall.bands[static_cast<std::size_t>(band)];
    RunTask task;
    task.job = &job;
    task.wall = &wall;
    task.face = &layout.face;
    task.cuts = &layout.cuts;
    task.profile = byId(job.profiles, stated.profile);
    task.band = band;
    task.frame = frame;
    const Length reachLeft = frame.left == Length() ? wall.reachLeft : Length();
    const Length reachRight = frame.right == layout.face.width ? wall.reachRight : Length();
    const bool rightward = frame.hand == Hand::LeftToRight;
    task.reachStart = rightward ? reachLeft : reachRight;
    task.reachEnd = rightward ? reachRight : reachLeft;
    if (band > 0) task.floor = stated.from.value_or(Length()) + stated.gap;
    if (static_cast<std::size_t>(band) + 1 < wall.bands.size())
      task.ceiling = wall.bands[static_cast<std::size_t>(band) + 1].from;
    task.firstNumber = nextNumber;
    take(layOutFromStart(task));
  }

  void take(RunResult result) {
    const int run = static_cast<int>(layout.runs.size());
    nextNumber += static_cast<int>(result.run.modules.size());
    result.run.startFollowed = result.startFollowed;
    nameMarks(result);
    for (Piece& piece : result.pieces) piece.run = run;
    if (layout.pieces.empty()) {
      layout.pieces = std::move(result.pieces);
    } else {
      std::move(result.pieces.begin(), result.pieces.end(), std::back_inserter(layout.pieces));
    }
    layout.runs.push_back(std::move(result.run));
  }

  // Pieces come by module, then rising; a sheet in several pieces numbers them from the bottom.
  void nameMarks(RunResult& result) const {
    for (std::size_t i = 0; i < result.pieces.size();) {
      std::size_t end = i;
      while (end < result.pieces.size() && result.pieces[end].module == result.pieces[i].module) ++end;
      const Module& module = result.run.modules[static_cast<std::size_t>(result.pieces[i].module)];
      const std::string mark = wall.letter + std::to_string(module.number);
      const auto first = result.pieces.begin() + static_cast<std::ptrdiff_t>(i);
      const auto last = result.pieces.begin() + static_cast<std::ptrdiff_t>(end);
      if (end - i > 1)
        std::stable_sort(first, last, [](const Piece& a, const Piece& b) { return a.bottom < b.bottom; });
      for (std::size_t k = i; k < end; ++k) {
        result.pieces[k].mark = end - i == 1 ? mark : mark + "." + std::to_string(k - i + 1);
      }
      i = end;
    }
    if (wall.endLaps.order == EndLaps::Order::TierByTier) {
      std::stable_sort(result.pieces.begin(), result.pieces.end(),
                       [](const Piece& a, const Piece& b) { return a.tier < b.tier; });
    }
  }
};

}  // namespace

Outcome<WallLayout> layOutWall(const Job& job, const Wall& wall) {
  WallLayout layout;
  layout.letter = wall.letter;
  auto face = wallFace(job, wall);
  if (!face) return face.faults();
  layout.face = std::move(face).value();
  layout.direction = hangDirection(job, wall, layout.face);
  layout.cuts = cutRegions(job.settings, wall, layout.face);
  const bool chosen =
      std::none_of(wall.bands.begin(), wall.bands.end(), [](const Band& band) { return band.profile.empty(); });
  layout.sheeted = wall.cladding == Cladding::Sheeted && !wall.bands.empty() && chosen;
  if (!layout.sheeted) return layout;
  Work work{job, wall, layout};
  for (const Band& band : wall.bands) {
    if (!byId(job.profiles, band.profile)) {
      return Fault{"walls." + wall.letter + ".bands",
                   "\"" + band.profile + "\" is no profile of this job; copy it into the job"};
    }
  }
  std::vector<Length> limits = runLimits(wall, layout.face.width);
  const bool rightward = layout.direction.hand == Hand::LeftToRight;
  for (std::size_t i = 0; i + 1 < limits.size(); ++i) {
    const std::size_t section = rightward ? i : limits.size() - 2 - i;
    const HangingFrame frame{limits[section], limits[section + 1], layout.direction.hand};
    for (std::size_t band = 0; band < wall.bands.size(); ++band) work.layOut(frame, static_cast<int>(band));
  }
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) layout.pieces[i].hangOrder = static_cast<int>(i) + 1;
  return layout;
}

}  // namespace ribwright
