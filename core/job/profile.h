// A sheet profile: a ribbed sheet's cross-section and what it is made of. Profiles are data, named by their dimensions,
// never by a maker; what a job uses is copied into the job.
//
// Section coordinates: x across the sheet from the module line toward the leading edge (x = -over at the starting edge,
// x = cover + under at the leading edge), y outward from the face of the supports (pan flats lie at y = 0).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/units/length.h"

namespace ribwright {

struct SectionPoint {
  Length x, y;
  bool operator==(const SectionPoint&) const = default;
};

struct SheetLengths {
  Length shortest = Length::feet(2);
  Length longest = Length::feet(40);  // common practice: what a truck carries
  Length increment = Length::inches(1);
  std::vector<Length> stocked{};  // sold off the shelf in these lengths alone, and cut from them; empty: made to length
  bool operator==(const SheetLengths&) const = default;
};

struct Profile {
  std::string id;    // named by dimensions: "rib-36-1.25-at-12"
  std::string name;  // what people read: "36 in cover, 1-1/4 in ribs at 12 in"
  Length cover;      // c: module line to module line; cover > over + under
  Length over;   // lip: how far the overlapping (starting) edge reaches past its module line, over the earlier sheet
  Length under;  // leg: how far the leading edge reaches past its module line, under the next sheet
  std::vector<SectionPoint> section;     // from the starting edge to the leading edge, x never falls
  Length thickness;                      // base steel, without coating or paint
  int coatingGramsPerSquareMetre = 275;  // metal coating and paint, both faces together (275: EN 10346 Z275)
  SheetLengths lengths;
  std::optional<Length> longestSpan;  // girt spacing this sheet may span, from the maker's table; absent: not stated

  Length metalWidth() const { return over + cover + under; }
  bool operator==(const Profile&) const = default;
};

}  // namespace ribwright
