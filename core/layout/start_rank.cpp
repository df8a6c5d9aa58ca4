#include "core/layout/start_rank.h"

#include <set>
#include <string>
#include <utility>

#include "core/job/by_id.h"

namespace ribwright {

namespace {

bool isNarrow(const Settings& settings, const Module& module) {
  return (module.startRipped || module.leadRipped) &&
         module.metalRight - module.metalLeft < settings.cornerTrimLeg + Length::inches(2);
}

// Inside the opening a seam is hidden or cut away; beside it, near the jamb, it is in the way of the trim.
bool isNear(Length seam, const CutRegion& cut, Length limit) {
  if (cut.penetration) return false;
  return (seam <= cut.left && cut.left - seam < limit) || (seam >= cut.right && seam - cut.right < limit);
}

std::vector<Piece> piecesOfRun(const WallLayout& layout, std::size_t run) {
  std::vector<Piece> pieces;
  for (const Piece& piece : layout.pieces) {
    if (piece.run == static_cast<int>(run)) pieces.push_back(piece);
  }
  return pieces;
}

void add(StartRank& whole, const StartRank& run) {
  whole.stops += run.stops;
  whole.seamsNearJambs += run.seamsNearJambs;
  whole.narrowRips += run.narrowRips;
  whole.sheets += run.sheets;
  whole.waste += run.waste;
}

}  // namespace

Area blanksOf(const Profile& profile, const std::vector<Piece>& pieces) {
  Area bought;
  for (const Piece& piece : pieces) bought += piece.blankLength * profile.metalWidth();
  return bought;
}

StartRank rankOf(const Settings& settings, const Profile& profile, const std::vector<CutRegion>& cuts,
                 const SheetRun& run, const std::vector<Piece>& pieces) {
  StartRank rank;
  std::set<Length> lengths;
  for (const Piece& piece : pieces) {
    if (piece.blankLength > profile.lengths.longest) ++rank.stops;
    lengths.insert(piece.blankLength);
  }
  if (run.uncovered > Area()) ++rank.stops;
  for (std::size_t k = 0; k + 1 < run.modules.size(); ++k) {
    for (const CutRegion& cut : cuts) {
      if (isNear(run.modules[k].leadLine, cut, settings.seamFromJamb)) ++rank.seamsNearJambs;
    }
  }
  for (const Module& module : run.modules) {
    if (isNarrow(settings, module)) ++rank.narrowRips;
  }
  rank.sheets = static_cast<int>(pieces.size());
  rank.lengths = static_cast<int>(lengths.size());
  rank.waste = blanksOf(profile, pieces) - run.pieces;
  rank.offset = run.offset;
  return rank;
}

StartRank rankOf(const Job& job, const Wall& wall, const WallLayout& layout) {
  StartRank whole;
  std::set<std::pair<std::string, Length>> lengths;
  for (std::size_t i = 0; i < layout.runs.size(); ++i) {
    const SheetRun& run = layout.runs[i];
    const std::string& profile = wall.bands[static_cast<std::size_t>(run.band)].profile;
    const std::vector<Piece> pieces = piecesOfRun(layout, i);
    add(whole, rankOf(job.settings, *byId(job.profiles, profile), layout.cuts, run, pieces));
    for (const Piece& piece : pieces) lengths.emplace(profile, piece.blankLength);
  }
  whole.lengths = static_cast<int>(lengths.size());
  if (!layout.runs.empty()) whole.offset = layout.runs.front().offset;
  return whole;
}

}  // namespace ribwright
