// Walls for worked examples: a profile of 36 in cover, lip 1-1/2 in and leg 3/4 in, and single walls of a free width.
#pragma once

#include "core/job/job.h"

namespace ribwright::examples {

inline Profile ribbed36() {
  Profile profile;
  profile.id = "rib-36";
  profile.name = "36 in cover, ribs 1-1/4 in at 12 in";
  profile.cover = Length::inches(36);
  profile.over = Length::inches(1, 32);
  profile.under = Length::inches(0, 48);
  profile.thickness = Length::nanometres(475'000);
  profile.lengths = {Length::feet(2), Length::feet(40), Length::inches(0, 32)};
  const Length high = Length::inches(1, 16);
  profile.section = {{-profile.over, Length()}, {-Length::inches(1), Length()}};
  for (int rib = 0; rib <= 3; ++rib) {
    const Length middle = Length::inches(12) * rib;
    if (rib > 0) profile.section.push_back({middle - Length::inches(1), Length()});
    profile.section.push_back({middle - Length::inches(0, 32), high});
    profile.section.push_back({middle + Length::inches(0, 32), high});
    if (rib < 3) profile.section.push_back({middle + Length::inches(1), Length()});
  }
  profile.section.push_back({profile.cover + profile.under, high});
  return profile;
}

// A free wall "A" of one band, hung left to right, hold-down 0, overhang 1-3/4 in, level at 12 ft unless `top` says
// more.
inline Job freeWall(Length width, std::vector<FacePoint> top = {}) {
  Job job;
  job.profiles = {ribbed36()};
  Wall wall;
  wall.letter = "A";
  wall.width = width;
  wall.hang = Hang::LeftToRight;
  wall.eaveHoldDown = wall.rakeHoldDown = Length();
  wall.top =
      top.empty() ? std::vector<FacePoint>{{Length(), Length::feet(12)}, {width, Length::feet(12)}} : std::move(top);
  Band band;
  band.profile = "rib-36";
  band.colour = "sand";
  wall.bands = {band};
  job.walls = {wall};
  return job;
}

// A gable end 40 ft wide, eave 12 ft, 4:12: the ridge stands at 12 ft + 20 ft x 4/12 = 18 ft 8 in.
inline Job gable40() {
  return freeWall(
      Length::feet(40),
      {{Length(), Length::feet(12)}, {Length::feet(20), Length::feet(18, 8)}, {Length::feet(40), Length::feet(12)}});
}

}  // namespace ribwright::examples
