// The large building of the benchmarks, and how long something takes at best.
#pragma once

#include <algorithm>
#include <chrono>
#include <functional>
#include <string>

#include "core/job/job.h"

namespace ribwright::bench {

inline Profile ribbed() {
  Profile profile;
  profile.id = "rib-36";
  profile.cover = Length::inches(36);
  profile.over = Length::inches(1, 32);
  profile.under = Length::inches(0, 48);
  profile.thickness = Length::nanometres(475'000);
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
  profile.lengths.longest = Length::feet(60);
  return profile;
}

inline Opening opening(int number, Length left) {
  Opening made;
  made.id = std::to_string(number);
  const bool door = number % 3 == 0;
  made.kind = door ? Opening::Kind::OverheadDoor : Opening::Kind::Window;
  made.place.distance = left;
  made.width = door ? Length::feet(12) : Length::feet(5, 4);
  made.height = door ? Length::feet(14) : Length::feet(4);
  made.sill = door ? Length() : Length::feet(3, 8);
  return made;
}

// Walls A and C `length` long and level, B and D 0.4 of it with a gable; openings evenly on the four.
inline Job building(Length length, int openings) {
  Job job;
  const Length width = scaled(length, 2, 5);
  job.profiles = {ribbed()};
  job.building.outline = {{Length(), Length()}, {length, Length()}, {length, width}, {Length(), width}};
  job.building.roof.kind = Roof::Kind::Gable;
  job.building.roof.ends = Roof::Ends::BD;
  job.building.roof.eave = Length::feet(24);
  job.building.roof.slope = Slope::per12(0, 8);
  for (const char* letter : {"A", "B", "C", "D"}) {
    Wall wall;
    wall.letter = letter;
    Band band;
    band.profile = "rib-36";
    wall.bands = {band};
    wall.endLaps.where = EndLaps::Where::None;
    const Length along = letter[0] == 'A' || letter[0] == 'C' ? length : width;
    const int here = openings / 4;
    for (int i = 0; i < here; ++i) wall.openings.push_back(opening(i, scaled(along, i, here) + Length::feet(3, 5)));
    job.walls.push_back(wall);
  }
  return job;
}

inline double seconds(const std::function<void()>& work, int times) {
  double best = 1e9;
  for (int i = 0; i < times; ++i) {
    const auto from = std::chrono::steady_clock::now();
    work();
    best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count());
  }
  return best;
}

}  // namespace ribwright::bench
