// The trade's rules: end laps where a sheet would be too long, nowhere else. The trade's rules: order lines hold every
// piece once, and are long enough.
#include <algorithm>
#include <map>

#include "tests/fuzz/layout_checker.h"

namespace ribwright::fuzz {
namespace {

// The blank that the whole sheet would want if nothing divided it.
Length undivided(const CheckedWall& wall, const SheetRun& run, const std::vector<const Piece*>& parts) {
  Length low = parts.front()->bottom, high = parts.front()->top;
  bool rake = false;
  for (const Piece* part : parts) {
    low = std::min(low, part->bottom);
    high = std::max(high, part->top);
    rake = rake || part->rake;
  }
  const bool inPlace = rake && wall.wall.rakeCut == RakeCut::InPlace;
  const Length allowance = inPlace ? wall.job.settings.rakeAllowance : Length();
  return roundUp(high - low + allowance, profileOf(wall.job, wall.wall, run.band)->lengths.increment);
}

void checkDivided(const CheckedWall& wall, const Piece& piece, const SheetRun& run, Complaints& complaints) {
  const EndLaps& laps = wall.wall.endLaps;
  const Length longest = profileOf(wall.job, wall.wall, run.band)->lengths.longest;
  if (piece.blankLength <= longest) return;
  for (const Girt& girt : wall.wall.girts) {
    const Length end = girt.height - laps.endBelowRow;
    complaints.check(end <= piece.bottom || end + laps.lap >= piece.top,
                     piece.mark + " is too long, though it could lap at " + girt.id + ", z " + text(end));
  }
}

}  // namespace

void checkEndLaps(const CheckedWall& wall, Complaints& complaints) {
  if (wall.wall.endLaps.where != EndLaps::Where::WhereNeeded) return;
  std::map<std::pair<int, int>, std::vector<const Piece*>> sheets;
  for (const Piece& piece : wall.layout.pieces) sheets[{piece.run, piece.module}].push_back(&piece);
  for (const auto& [where, parts] : sheets) {
    const SheetRun& run = wall.layout.runs[static_cast<std::size_t>(where.first)];
    const Module& module = run.modules[static_cast<std::size_t>(where.second)];
    const Length longest = profileOf(wall.job, wall.wall, run.band)->lengths.longest;
    complaints.check(!module.tiered || undivided(wall, run, parts) > longest,
                     "sheet " + std::to_string(module.number) + " is divided though it need not be");
    for (const Piece* piece : parts) checkDivided(wall, *piece, run, complaints);
  }
}

void checkOrder(const Job& job, const Plan& plan, Complaints& complaints) {
  std::map<std::string, const OrderLine*> ordered;
  int count = 0;
  for (const OrderLine& line : plan.order.lines) {
    complaints.check(line.line == ++count, "order lines are not counted 1, 2 ...");
    for (const std::string& mark : line.marks) {
      complaints.check(ordered.emplace(mark, &line).second, mark + " is ordered twice");
    }
  }
  std::size_t pieces = 0;
  for (std::size_t i = 0; i < plan.walls.size(); ++i) {
    const WallLayout& layout = plan.walls[i]->layout;
    for (const Piece& piece : layout.pieces) {
      ++pieces;
      const auto line = ordered.find(piece.mark);
      if (!complaints.check(line != ordered.end(), piece.mark + " is not ordered")) continue;
      const SheetRun& run = layout.runs[static_cast<std::size_t>(piece.run)];
      const Band& band = job.walls[i].bands[static_cast<std::size_t>(run.band)];
      const OrderLine& order = *line->second;
      complaints.check(order.length >= piece.blankLength, piece.mark + " is ordered too short");
      const bool same = order.profile == band.profile && (order.translucent || order.colour == band.colour);
      complaints.check(same, piece.mark + " is ordered as another sheet");
      complaints.check(order.translucent == run.modules[static_cast<std::size_t>(piece.module)].translucent,
                       piece.mark + " is ordered translucent or not");
    }
  }
  complaints.check(pieces == ordered.size(), "more ordered than there are pieces");
}

}  // namespace ribwright::fuzz
