#include "core/drawing/page_breaks.h"

#include <algorithm>
#include <optional>

namespace ribwright {

namespace {

// Module lines of the lowest band, between the corners, rising.
std::vector<Length> moduleLines(const WallLayout& layout) {
  std::vector<Length> lines;
  for (const SheetRun& run : layout.runs) {
    if (run.band != 0) continue;
    for (const Module& module : run.modules) {
      lines.push_back(module.startLine);
      lines.push_back(module.leadLine);
    }
  }
  std::erase_if(lines, [&](Length u) { return u <= Length() || u >= layout.face.width; });
  std::sort(lines.begin(), lines.end());
  lines.erase(std::unique(lines.begin(), lines.end()), lines.end());
  return lines;
}

bool inOpening(const WallLayout& layout, Length u) {
  return std::any_of(layout.cuts.begin(), layout.cuts.end(),
                     [&](const CutRegion& cut) { return cut.left < u && u < cut.right; });
}

// The line nearest to `wanted` after `from` and no farther than `most` from it; one beside openings when there is one
// within a quarter of a page.
std::optional<Length> breakNear(const WallLayout& layout, const std::vector<Length>& lines, Length wanted, Length from,
                                Length most) {
  std::optional<Length> nearest, beside;
  const auto better = [&](const std::optional<Length>& known, Length u) {
    return !known || absolute(u - wanted) < absolute(*known - wanted);
  };
  for (const Length u : lines) {
    if (u <= from || u > from + most) continue;
    if (better(nearest, u)) nearest = u;
    if (!inOpening(layout, u) && absolute(u - wanted) <= half(half(most)) && better(beside, u)) beside = u;
  }
  return beside ? beside : nearest;
}

}  // namespace

std::vector<Length> pageBreaks(const WallLayout& layout, Length most) {
  const Length width = layout.face.width;
  const std::vector<Length> lines = moduleLines(layout);
  std::vector<Length> breaks{Length()};
  while (width - breaks.back() > most) {
    const Length from = breaks.back();
    const std::int64_t pages = wholeTimes(width - from + most - Length::nanometres(1), most);
    const Length wanted = from + scaled(width - from, 1, pages);
    // Without a module line within reach the wall is broken where the page ends.
    breaks.push_back(breakNear(layout, lines, wanted, from, most).value_or(wanted));
  }
  breaks.push_back(width);
  return breaks;
}

}  // namespace ribwright
