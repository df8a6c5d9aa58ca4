// Cross-sections small enough to work out on paper.
#pragma once

#include "core/job/section.h"

namespace ribwright {

inline Length inch(std::int64_t whole, std::int64_t sixtyFourths = 0) { return Length::inches(whole, sixtyFourths); }

// Cover 12 in, a rib 1 in deep on the module line: crown 1 in, base 3 in; lip 2 in, leg 1 in, so that the leg ends
// half-way down its rib. A stiffener 1/4 in deep in the middle of the pan.
inline Profile oneRib() {
  Profile profile;
  profile.id = "rib-12-1-at-12";
  profile.cover = inch(12);
  profile.over = inch(2);
  profile.under = inch(1);
  profile.section = {{inch(-2), inch(0)},        {inch(-1, -32), inch(0)},   {inch(0, -32), inch(1)},
                     {inch(0, 32), inch(1)},     {inch(1, 32), inch(0)},     {inch(5), inch(0)},
                     {inch(5, 32), inch(0, 16)}, {inch(6, 32), inch(0, 16)}, {inch(7), inch(0)},
                     {inch(10, 32), inch(0)},    {inch(11, 32), inch(1)},    {inch(12, 32), inch(1)},
                     {inch(13), inch(0, 32)}};
  profile.thickness = Length::millimetres(1);
  profile.coatingGramsPerSquareMetre = 275;
  return profile;
}

// The same rib on both edges, lip and leg alike.
inline Profile twoEdgesAlike() {
  Profile profile = oneRib();
  profile.under = inch(2);
  profile.section.pop_back();
  profile.section.erase(profile.section.begin() + 5, profile.section.begin() + 9);  // the stiffener is off the middle
  profile.section.push_back({inch(13, 32), inch(0)});
  profile.section.push_back({inch(14), inch(0)});
  return profile;
}

}  // namespace ribwright
