// Where the steel of a wall really is: screw faces moved to what was measured on site.
//
// A reading is the height above the chalk line of the edge that the girt is typed by; between stations it is linear,
// beyond the first and the last nothing is known. A stick check is an interval, and all of it must hold: a measured
// face is what is steel whatever the true height in that interval is.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/fastening/holes.h"

namespace ribwright {

// Id under which a wall's survey lists its eave purlin; its typed edge is the steel line.
inline constexpr std::string_view eaveSurveyId = "eave";

// z of the chalk line at u: where it was snapped, else the sheets' bottom by the plans (the lower one at a step).
Length chalkLineAt(const Wall& wall, const WallLayout& layout, Length u);

// How far a reading puts its edge above (positive) `planned`, the edge's z by the plans there; a stick check: its
// middle.
Length shiftOf(const Wall& wall, const WallLayout& layout, const GirtReading& reading, Length planned);

// How far a measured edge may stand above (positive) or below the plans'.
struct Shift {
  Length least, most;
  bool operator==(const Shift&) const = default;
};

// An upright stretch of steel that takes screws; margins are the hole's. Empty when low > high.
struct MeasuredFace {
  Length low, high;       // z
  bool surveyed = false;  // false: as the plans state it
  bool upright = false;   // runs upright past any row; low and high mean nothing
  bool operator==(const MeasuredFace&) const = default;
};

class MeasuredFaces {
 public:
  // Looks at all of them as long as it lives.
  MeasuredFaces(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports);

  // Of a girt (index into Wall::girts), of the eave purlin against the steel line, of the slab edge against the
  // concrete that the plans state. Nothing where there is no reading on one side of u and none at u. Each bound is
  // rounded once, half to even, to the nanometre (HeightLine).
  std::optional<Shift> ofGirt(std::int32_t girt, Length u) const;
  std::optional<Shift> ofEave(Length u) const;
  std::optional<Shift> ofSlab(Length u) const;

  // The face that a hole of a row sits on. Girt: each of the stretch's girts moved by its own readings, and what they
  // then have in common; as planned where one of them is not measured. Base: moved by the slab edge's readings where
  // there are some (a base on a wall never is). Eave: moved by the purlin's. Rake, head, sill: as planned. Upright
  // steel in a girt's way has no height to be wrong by, and counts as surveyed. Nothing: no
  // cross-section is stated.
  std::optional<MeasuredFace> of(const Hole& hole) const;

 private:
  // Heights against the plans from station to station.
  struct Line {
    Length from, to;  // u of the first and the last station
    HeightLine least, most;
  };
  static std::optional<Shift> at(const std::optional<Line>& line, Length u);
  template <class Planned>
  std::optional<Line> lineOf(const std::vector<GirtReading>& readings, const Planned& planned) const;
  std::optional<Line> slabLine() const;
  MeasuredFace girtAt(const Stretch& stretch, Length u) const;

  const Job& job_;
  const Wall& wall_;
  const WallLayout& layout_;
  const WallSupports& supports_;
  std::vector<std::optional<Line>> girts_;  // parallel to Wall::girts
  std::optional<Line> eave_, slab_;
};

}  // namespace ribwright
