#include "core/layout/legs.h"

#include <algorithm>

namespace ribwright {

namespace {

LegStrip strip(std::size_t module, const StraightCut& cut, Length from, Length to) {
  return {static_cast<int>(module), cut.cut, from, to, cut.bottom, cut.top, cut.reachesFloor};
}

bool meet(const LegStrip& a, const LegStrip& b) {
  const bool along = a.from < b.to && b.from < a.to;
  const bool up = (b.reachesFloor || a.top > b.bottom) && (a.reachesFloor || b.top > a.bottom);
  return along && up;
}

// First module whose lap with the next one may hold `t`.
std::size_t firstLapAt(const std::vector<RunModule>& modules, Length t) {
  const auto found =
      std::partition_point(modules.begin(), modules.end(), [&](const RunModule& m) { return m.to <= t; });
  return static_cast<std::size_t>(found - modules.begin());
}

}  // namespace

std::vector<LegStrip> legStrips(const std::vector<RunModule>& modules, const std::vector<StraightCut>& cuts) {
  std::vector<LegStrip> earlier, later;
  for (const StraightCut& cut : cuts) {
    // The opening ends inside the lap of k and k + 1: what is left of k beside it is covered by k + 1.
    if (const std::size_t k = firstLapAt(modules, cut.to); k + 1 < modules.size() && modules[k + 1].from <= cut.to) {
      earlier.push_back(strip(k, cut, cut.to, modules[k].to));
    }
    // The opening begins inside the lap: what is left of k + 1 beside it is covered by k.
    const auto before =
        std::partition_point(modules.begin(), modules.end(), [&](const RunModule& m) { return m.from < cut.from; });
    const auto next = static_cast<std::size_t>(before - modules.begin());  // one past k + 1
    if (next >= 2 && modules[next - 2].to >= cut.from) {
      later.push_back(strip(next - 1, cut, modules[next - 1].from, cut.from));
    }
  }
  std::vector<LegStrip> strips = earlier;
  for (const LegStrip& candidate : later) {
    const bool bare = std::any_of(earlier.begin(), earlier.end(), [&](const LegStrip& taken) {
      return taken.module + 1 == candidate.module && meet(taken, candidate);
    });
    if (!bare) strips.push_back(candidate);
  }
  std::stable_sort(strips.begin(), strips.end(),
                   [](const LegStrip& a, const LegStrip& b) { return a.module < b.module; });
  return strips;
}

}  // namespace ribwright
