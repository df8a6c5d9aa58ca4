// Work whose drag is one point that snaps by itself: a corner, or the place of something new.
#pragma once

#include "ui/tools/wall_drag.h"

namespace ribwright {

class PointWork : public DragWork {
 public:
  explicit PointWork(const DraggedWall& wall) : wall_(wall) {}

  std::vector<SnapCandidate> candidates() const override {
    return snapCandidates(*wall_.job, *wall_.plan, wall_.wall, {});
  }
  SnappedDrag snapped(const FacePoint& to, const std::vector<SnapCandidate>& candidates, Length reach,
                      Length unit) const override {
    return snappedBy(*this, to, candidates, reach, unit, wall_.style(),
                     [&](Axis axis) { return std::vector{axis == Axis::U ? to.u : to.z}; });
  }

 protected:
  DraggedWall wall_;
};

}  // namespace ribwright
