#include "core/layout/end_laps.h"

#include <algorithm>

#include "core/layout/girt_row.h"

namespace ribwright {

std::vector<Length> lapRows(const Wall& wall, const std::vector<Member>& members, Length left, Length right) {
  std::vector<Length> rows;
  for (const Girt& girt : wall.girts) {
    const bool typed = wall.endLaps.where == EndLaps::Where::AtGirts;
    if (typed && std::find(wall.endLaps.girts.begin(), wall.endLaps.girts.end(), girt.id) == wall.endLaps.girts.end())
      continue;
    const bool whole = (!girt.from || *girt.from <= left) && (!girt.to || *girt.to >= right);
    if (whole) rows.push_back(girtFace(girt, members).row);
  }
  std::sort(rows.begin(), rows.end());
  rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
  return rows;
}

std::vector<Length> lapEndsWhereNeeded(const EndLaps& laps, const std::vector<Length>& rows, Length bottom, Length top,
                                       Length longest) {
  std::vector<Length> ends;
  Length low = bottom;
  while (top - low > longest) {
    Length best = low;
    for (const Length row : rows) {
      const Length end = row - laps.endBelowRow;
      if (end > low && end + laps.lap - low <= longest && end + laps.lap < top) best = std::max(best, end);
    }
    if (best == low) break;
    ends.push_back(best);
    low = best;
  }
  return ends;
}

int lapsNeeded(const EndLaps& laps, const std::vector<Length>& lapEnds, Length bottom, Length top, Length longest) {
  int needed = 0;
  Length low = bottom;
  for (const Length end : lapEnds) {
    if (top - low <= longest || end + laps.lap >= top) break;
    ++needed;
    low = end;
  }
  return needed;
}

Length longestOrder(const SheetLengths& lengths) {
  return lengths.increment * wholeTimes(lengths.longest, lengths.increment);
}

}  // namespace ribwright
