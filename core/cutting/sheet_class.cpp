#include "core/cutting/sheet_class.h"

#include <stdexcept>

#include "core/job/by_id.h"

namespace ribwright {

SheetClass sheetClassOf(const Job& job, const WallLayout& layout, const Piece& piece) {
  const Wall* wall = byLetter(job.walls, layout.letter);
  if (!wall) throw std::invalid_argument("no wall " + layout.letter);
  const SheetRun& run = layout.runs.at(static_cast<std::size_t>(piece.run));
  const Band& band = wall->bands.at(static_cast<std::size_t>(run.band));
  const Profile* profile = byId(job.profiles, band.profile);
  if (!profile) throw std::invalid_argument("no profile " + band.profile);
  const bool translucent = run.modules.at(static_cast<std::size_t>(piece.module)).translucent;
  return {profile->id, band.thickness.value_or(profile->thickness), translucent ? "" : band.colour, translucent};
}

}  // namespace ribwright
