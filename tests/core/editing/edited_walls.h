// A small building whose walls are edited in the tests, and what must hold of every job that an edit gives.
#pragma once

#include <catch2/catch.hpp>
#include <string>

#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/core/tape_lengths.h"

namespace ribwright {

// The walls of workshop() by number.
inline constexpr std::size_t A = 0, B = 1, C = 2;

inline Profile ribbedSheet() {
  Profile profile;
  profile.id = "rib-36";
  profile.cover = in(36);
  profile.over = in(1, 8);
  profile.under = in(0, 12);
  profile.thickness = Length::nanometres(475'000);
  profile.section = {{-profile.over, Length()}, {profile.cover + profile.under, Length()}};
  profile.lengths.longest = ft(60);
  return profile;
}

inline Opening window(const std::string& id, const Anchor& place) {
  Opening made;
  made.id = id;
  made.place = place;
  made.width = ft(4);
  made.height = ft(3);
  made.sill = ft(3, 6);
  return made;
}

inline Girt girt(const std::string& id, Length height) {
  Girt made;
  made.id = id;
  made.height = height;
  return made;
}

// Walls A to D, 60 ft by 40 ft, eave 14 ft and gables over B and D; on A columns every 20 ft, girts at 5 and 10 ft, W1
// 8 ft right of column 2 and W2 with its centre at 5 ft from the right corner.
inline Job workshop() {
  Job job;
  job.profiles = {ribbedSheet()};
  job.building.outline = {{{}, {}}, {ft(60), {}}, {ft(60), ft(40)}, {{}, ft(40)}};
  job.building.roof.kind = Roof::Kind::Gable;
  job.building.roof.eave = ft(14);
  job.building.roof.slope = Slope::per12(1, 0);
  for (const char* letter : {"A", "B", "C", "D"}) {
    Wall wall;
    wall.letter = letter;
    wall.bands.resize(1);
    wall.bands[0].profile = "rib-36";
    wall.girts = {girt("g1", ft(5)), girt("g2", ft(10))};
    job.walls.push_back(wall);
  }
  Wall& front = job.walls[0];
  front.columns.bays = {ft(20), ft(20), ft(20)};
  front.openings = {window("W1", {Anchor::From::Column, 2, ft(8), Anchor::To::NearJamb}),
                    window("W2", {Anchor::From::RightCorner, 0, ft(5), Anchor::To::Centre})};
  return job;
}

// The job that an edit gave, which the job file holds and gives back equal.
inline Job given(const Outcome<Job>& edited) {
  for (const Fault& fault : edited ? std::vector<Fault>() : edited.faults()) UNSCOPED_INFO(oneLine(fault));
  REQUIRE(edited);
  for (const Fault& fault : faultsOf(edited.value())) FAIL(oneLine(fault));
  return edited.value();
}

// Refused with a place and a remedy.
inline std::string refusal(const Outcome<Job>& edited) {
  REQUIRE_FALSE(edited);
  CHECK_FALSE(edited.faults().front().place.empty());
  CHECK_FALSE(edited.faults().front().message.empty());
  return edited.faults().front().message;
}

}  // namespace ribwright
