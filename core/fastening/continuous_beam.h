// A straight beam over level supports, simple at both ends, each span with its own even load and stiffness: doubles, in
// any units that go together (mm, N/mm, N mm2).
#pragma once

#include <cstddef>
#include <vector>

namespace ribwright {

struct BeamSpan {
  double length = 0;     // over 0
  double load = 0;       // per length, downward
  double stiffness = 0;  // EI, over 0
};

struct BeamSag {
  double at = 0;    // from the span's left support
  double down = 0;  // greatest there is; 0 where the span bows up all over
};

// Moments over the supports, one more than spans, positive where the beam sags: the three-moment equation (Clapeyron)
// with even loads, and level supports.
std::vector<double> supportMoments(const std::vector<BeamSpan>& spans);

// Where each span goes down most, and how far: small deflections, no shear.
std::vector<BeamSag> beamSags(const std::vector<BeamSpan>& spans);

}  // namespace ribwright
