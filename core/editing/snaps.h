// What a place that is dragged or drawn can snap to, and which of it it snaps to.
//
// All in lengths: the caller turns its pixels into the reach, so that the same distance on the screen snaps at every
// zoom. A real thing within reach always wins over a whole unit; among real things the kind decides, then the distance,
// then the place.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "core/words/words.h"

namespace ribwright {

enum class Axis { U, Z };

struct SnapCandidate {
  // In this order they win.
  enum class Kind { Column, Girt, OpeningEdge, Corner, Joint, ModuleLine, Middle, WholeUnit };
  Kind kind = Kind::Column;
  Axis axis = Axis::U;
  Length at;
  Phrase name;     // "left jamb of W1"
  std::string id;  // of the girt, opening or penetration, number of the column: what lights up; else empty
  bool operator==(const SnapCandidate&) const = default;
};

// Along u: columns, jambs and edges of openings and penetrations and their centres, corners, joints, module lines, ends
// of girts, middles of bays and of the wall, the ridge. Along z: girts' rows and edges, heads and sills, base and eave,
// limits of bands. `leftOut`: ids of what is dragged (a column by its number, "3"). None on a wall that is not laid
// out.
std::vector<SnapCandidate> snapCandidates(const Job& job, const Plan& plan, std::size_t wall,
                                          const std::vector<std::string>& leftOut);

// The unit whose whole multiples are of use at this reach: 1 in or 10 mm where that is at least four times the reach,
// else 1 ft or 100 mm.
Length wholeUnit(UnitSystem units, Length reach);

struct Snap {
  std::size_t place = 0;  // which of the places that were asked for
  Length at;              // where it comes to
  Length by;              // how far that is
  SnapCandidate to;
  bool operator==(const Snap&) const = default;
};

// The place along the axis, snapped; absent: nothing lies within reach. `unit`: of whole units; nothing: none. `style`
// is for the name of a whole unit.
std::optional<Snap> snap(Axis axis, Length at, const std::vector<SnapCandidate>& candidates, Length reach, Length unit,
                         const LengthStyle& style);
// Of several places that move together (both jambs and the centre of what is dragged) the one that wins; of two alike
// the first.
std::optional<Snap> snapAny(Axis axis, const std::vector<Length>& places, const std::vector<SnapCandidate>& candidates,
                            Length reach, Length unit, const LengthStyle& style);

}  // namespace ribwright
