#include "core/drawing/band_heights.h"

#include <algorithm>

#include "core/drawing/shown_length.h"

namespace ribwright {

std::vector<HeightLabel> bandHeights(const WallView& view) {
  std::vector<HeightLabel> heights;
  if (!view.layout->sheeted) return heights;
  for (std::size_t i = 1; i < view.wall->bands.size(); ++i) {
    const auto& from = view.wall->bands[i].from;
    if (!from || partsInFace(view, *from, view.from, view.to).empty()) continue;
    const auto number = static_cast<std::int64_t>(i + 1);
    heights.push_back(
        {view.say("paper.band", {{"number", number}, {"height", dimensionText(*from, view.style)}}), *from});
  }
  std::stable_sort(heights.begin(), heights.end(),
                   [](const HeightLabel& a, const HeightLabel& b) { return a.z < b.z; });
  return heights;
}

}  // namespace ribwright
