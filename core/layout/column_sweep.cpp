#include "core/layout/column_sweep.h"

#include <algorithm>

namespace ribwright {

namespace {}  // namespace

void ColumnSweep::enter(Length left, Length right) {
  std::erase_if(cuts_, [&](std::size_t cut) { return face_.cuts[cut].to <= left; });
  while (nextCut_ < face_.cuts.size() && face_.cuts[nextCut_].from <= left) {
    if (face_.cuts[nextCut_].to > left) cuts_.push_back(nextCut_);
    ++nextCut_;
  }
  while (firstModule_ < face_.modules.size() && face_.modules[firstModule_].to <= left) ++firstModule_;
  modules_.clear();
  for (std::size_t k = firstModule_; k < face_.modules.size() && face_.modules[k].from < right; ++k) {
    if (face_.modules[k].from <= left && face_.modules[k].to >= right) modules_.push_back(k);
  }
  strips_.clear();
  for (const std::size_t k : modules_) {
    for (std::size_t s = firstStripOf(k); s < face_.strips.size() && face_.strips[s].module == static_cast<int>(k);
         ++s) {
      if (face_.strips[s].from <= left && face_.strips[s].to >= right) strips_.push_back(s);
    }
  }
  gatherBoundaries();
}

std::size_t ColumnSweep::firstStripOf(std::size_t module) const {
  const auto found = std::partition_point(face_.strips.begin(), face_.strips.end(), [&](const LegStrip& strip) {
    return strip.module < static_cast<int>(module);
  });
  return static_cast<std::size_t>(found - face_.strips.begin());
}

std::size_t ColumnSweep::lapsHere() const {
  int most = 0;
  for (const std::size_t k : modules_) most = std::max(most, face_.laps.empty() ? 0 : face_.laps[k]);
  return static_cast<std::size_t>(most);
}

void ColumnSweep::gatherBoundaries() {
  boundaries_ = {{EdgeSource::Kind::Bottom, 0, &face_.bottom, {}}, {EdgeSource::Kind::Top, 0, &face_.top, {}}};
  if (face_.floor) boundaries_.push_back({EdgeSource::Kind::Floor, 0, nullptr, *face_.floor});
  if (face_.ceiling) boundaries_.push_back({EdgeSource::Kind::Ceiling, 0, nullptr, *face_.ceiling});
  for (const std::size_t i : cuts_) {
    if (!face_.cuts[i].reachesFloor)
      boundaries_.push_back({EdgeSource::Kind::CutLower, static_cast<int>(i), &face_.cuts[i].lower, {}});
    boundaries_.push_back({EdgeSource::Kind::CutUpper, static_cast<int>(i), &face_.cuts[i].upper, {}});
  }
  for (const std::size_t s : strips_) {
    if (!face_.strips[s].reachesFloor)
      boundaries_.push_back({EdgeSource::Kind::LegBottom, static_cast<int>(s), nullptr, face_.strips[s].bottom});
    boundaries_.push_back({EdgeSource::Kind::LegTop, static_cast<int>(s), nullptr, face_.strips[s].top});
  }
  for (std::size_t lap = 0; lap < lapsHere(); ++lap) {
    boundaries_.push_back({EdgeSource::Kind::LapEnd, static_cast<int>(lap), nullptr, face_.lapEnds[lap]});
    boundaries_.push_back(
        {EdgeSource::Kind::LapTop, static_cast<int>(lap), nullptr, face_.lapEnds[lap] + face_.lapRise});
  }
}

}  // namespace ribwright
