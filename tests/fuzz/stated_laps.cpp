// Side laps: the upright line along which stitch screws go through the crowns of both sheets.
#include <algorithm>

#include "tests/fuzz/stated_places.h"
#include "tests/fuzz/stated_seats.h"

namespace ribwright::fuzz {
namespace {

// The middle of the widest common crown, as far as it keeps clear of both edges.
std::optional<Nm> lineOf(const Spans& crowns, const ScrewedModule& earlier, const ScrewedModule& later, Nm r) {
  std::optional<Nm> line;
  Nm widest = -1;
  for (const Span& crown : common(moved(crowns, earlier.line), moved(crowns, later.line))) {
    const Spans clear = within({crown}, later.metalFrom + r, earlier.metalTo - r);
    if (clear.empty() || clear.front().to - clear.front().from <= widest) continue;
    widest = clear.front().to - clear.front().from;
    line = std::clamp(crown.from + halved(crown.to - crown.from), clear.front().from, clear.front().to);
  }
  return line;
}

}  // namespace

LapLines lapLines(const ScrewedWall& wall, const ScrewedRun& run) {
  LapLines laps;
  const int screw = run.pattern ? screwIndex(wall.job, run.pattern->stitchScrew) : -1;
  if (screw < 0 || !run.pattern->stitchSpacing) return laps;
  const Spans crowns = statedCrowns(*run.profile);
  for (std::size_t i = 1; i < run.modules.size(); ++i) {
    const ScrewedModule &earlier = run.modules[i - 1], &later = run.modules[i];
    if (later.metalFrom >= earlier.metalTo) continue;
    const auto standsAt = [&](Nm u) {
      return commonStands(run.metal.standsOf(earlier.index, u), run.metal.standsOf(later.index, u));
    };
    const auto line = lineOf(crowns, earlier, later, wall.fromEdge(screw));
    if (!line) {
      laps.noCrown = true;
      const Nm middle = later.metalFrom + halved(earlier.metalTo - later.metalFrom);
      laps.noCrownThere = laps.noCrownThere || !standsAt(run.along.u(middle)).empty();
      continue;
    }
    const Nm u = run.along.u(*line);
    laps.lines.push_back({later.index, u, standsAt(u)});
  }
  return laps;
}

}  // namespace ribwright::fuzz
