// The trade's rules: position mark = wall letter + hanging number, .1 .2 from the bottom where a sheet is in several
// pieces.
#include <algorithm>
#include <map>
#include <set>

#include "tests/fuzz/layout_checker.h"

namespace ribwright::fuzz {
namespace {

// Hanging order as one number a piece: by run, then sheet by sheet or tier by tier.
std::vector<int> orderKey(const CheckedWall& wall, const Piece& piece) {
  if (wall.wall.endLaps.order == EndLaps::Order::TierByTier) return {piece.run, piece.tier, piece.module};
  return {piece.run, piece.module, piece.tier};
}

void checkPartsOf(const std::string& sheet, std::vector<const Piece*> parts, Complaints& complaints) {
  if (parts.size() == 1) {
    complaints.check(parts.front()->mark == sheet, "mark " + parts.front()->mark + " should be " + sheet);
    return;
  }
  std::map<std::string, Length> bottoms;
  for (const Piece* part : parts) bottoms[part->mark] = part->bottom;
  Length below = parts.front()->bottom;
  for (const Piece* part : parts) below = std::min(below, part->bottom);
  for (std::size_t i = 1; i <= parts.size(); ++i) {
    const auto found = bottoms.find(sheet + "." + std::to_string(i));
    if (!complaints.check(found != bottoms.end(), "no piece " + sheet + "." + std::to_string(i))) return;
    complaints.check(found->second >= below, found->first + " is lower than the part before it");
    below = found->second;
  }
}

}  // namespace

void checkMarks(const CheckedWall& wall, Complaints& complaints) {
  const WallLayout& layout = wall.layout;
  std::map<std::pair<int, int>, std::vector<const Piece*>> sheets;
  std::set<std::string> marks;
  for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
    const Piece& piece = layout.pieces[i];
    complaints.check(piece.hangOrder == static_cast<int>(i) + 1, piece.mark + " hangs out of turn");
    complaints.check(marks.insert(piece.mark).second, piece.mark + " twice");
    sheets[{piece.run, piece.module}].push_back(&piece);
    if (i == 0) continue;
    complaints.check(orderKey(wall, layout.pieces[i - 1]) <= orderKey(wall, piece), piece.mark + " comes too late");
  }
  for (std::size_t run = 0; run < layout.runs.size(); ++run) {
    for (std::size_t module = 0; module < layout.runs[run].modules.size(); ++module) {
      const std::string sheet = layout.letter + std::to_string(layout.runs[run].modules[module].number);
      const auto parts = sheets.find({static_cast<int>(run), static_cast<int>(module)});
      // Of a sheet that hangs there may be nothing left to see; its metal is held against the slabs elsewhere.
      if (parts == sheets.end() && layout.runs[run].modules[module].hung) continue;
      if (complaints.check(parts != sheets.end(), sheet + " has no piece"))
        checkPartsOf(sheet, parts->second, complaints);
    }
  }
}

}  // namespace ribwright::fuzz
