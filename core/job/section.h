// What follows from a profile's cross-section polyline: ribs, flats, developed width, and whether it may
// be turned.
//
// Units and shapes: x and y as in profile.h. Everything is exact but the developed width, which is a sum of roots.
// Expects what the job reader lets through: first x = -over, last x = cover + under, x never falls. What lies at or
// below y = 0 is no rib. A section of fewer than two points has no ribs and no flats. Curved (corrugated) sheets are
// given as short chords; there the level chord at the extreme height is the flat.
#pragma once

#include <optional>
#include <vector>

#include "core/job/profile.h"
#include "core/units/length.h"

namespace ribwright {

// x from `from` to `to`, from <= to.
struct Flat {
  Length from, to;
  bool operator==(const Flat&) const = default;
};

// From the first bend off the pan to the last bend back, or to the metal's edge where the sheet ends on the rib.
// Stiffening ribs in the pan are ribs too; `height` tells them from the sheet's main ribs.
struct Rib {
  Length from, to;  // x, from < to
  Length height;    // highest y of this rib, > 0
  bool operator==(const Rib&) const = default;
};

struct Section {
  Length cover;
  Length metalWidth;             // from edge to edge: over + cover + under
  Length depth;                  // highest y
  std::vector<Rib> ribs;         // x rising
  std::vector<Flat> crownFlats;  // level at y = depth (none on a flat sheet), x rising
  std::vector<Flat> panFlats;    // level at y = 0, x rising
  double developedWidth = 0;     // in mm: sum of the chords; for weight, never to decide where metal is
  // The section equals its own mirror image about the middle of the metal, so that a sheet turned end for end laps the
  // same way. Of the shape: a vertex on a straight side says nothing.
  bool turnable = false;
  bool operator==(const Section&) const = default;
};

Section sectionOf(const Profile& profile);

// The polyline without repeated points and without vertices on a straight side.
std::vector<SectionPoint> bends(const std::vector<SectionPoint>& section);

// Which rib covers x, for x anywhere along a run whose module lines lie at whole covers. On a lap both sheets' ribs
// count, since they nest. they nest, and what comes back reaches over both. A bend belongs to its rib. The answer lies
// in x's own coordinates. Absent: x lies on the pan. Throws std::domain_error unless cover > 0.
std::optional<Rib> ribAt(const Section& section, Length x);

// The same metal laid with a wider side lap: `more` of the cover goes to the lip, and the module line moves by it. For
// a corrugated sheet `more` is a whole number of pitches. Throws std::invalid_argument unless 0 <= more and the cover
// left exceeds lip and leg together.
Profile lappedBy(const Profile& profile, Length more);

}  // namespace ribwright
