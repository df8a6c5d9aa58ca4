// Where every screw of a wall goes, from what the plans state; and where a screw that a pattern asks for cannot go.
//
// A hole in this list holds every rule: it lies in metal, at least 1.5 d from every edge of every sheet of its run
// (AISI S100-16), structural ones on a flat that bears on the support and on the support's screw face, stitch screws on
// a crown through two sheets, and no other hole on one of its sheets is nearer than max(3 d, 1 in). What cannot hold is
// a Refusal, for a finding; a place where the wall has no metal (an opening, past a corner) is neither.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/fastening/supports.h"

namespace ribwright {

// In the order in which holes nearer than max(3 d, 1 in) merge: the earlier kind stays.
enum class HoleKind : std::uint8_t { Base, Eave, Rake, Girt, EndLap, Head, Sill, Jamb, Stitch };

struct Hole {
  static constexpr int kMostSheets = 4;  // where an end lap crosses a side lap

  HoleKind kind = HoleKind::Girt;
  std::int32_t row = -1;      // index into WallSupports::rows; of a jamb hole into WallSupports::jambs; stitch: -1
  std::int32_t stretch = -1;  // of that row; jamb and stitch: -1
  std::int32_t screw = 0;     // index into Job::screws
  std::int32_t run = 0;
  Length u, z;
  // Indices into WallLayout::pieces: first the piece that owns the screw (it counts there), then its twins; then -1.
  std::array<std::int32_t, kMostSheets> pieces{-1, -1, -1, -1};
  std::int8_t sheets = 1;   // how many of them
  std::int8_t upper = 0;    // which of them lies on top
  bool throughLap = false;  // through two sheets side by side
  bool inPlace = false;     // drilled where it hangs, not in the stack
  bool corner = false;      // of a sheet that takes the corner pattern
  bool operator==(const Hole&) const = default;
};

struct Refusal {
  enum class Why : std::uint8_t {
    OffFlat,       // structural: not on a flat that bears, or too near a bend
    NearEdge,      // nearer than 1.5 d to a metal edge, its own sheet's or a neighbour's
    OffScrewFace,  // steel is not there, or too near the end of its face
    NearHole,      // nearer than max(3 d, 1 in) to a hole of the same kind
    UnderRib,      // a jamb flange on which no flat bears
    NoCrown,       // stitch: no crown flat through both sheets
    TooManySheets,
  };
  Why why = Why::NearEdge;
  HoleKind kind = HoleKind::Girt;
  std::int32_t row = -1, stretch = -1, screw = 0, run = 0;  // as in Hole
  std::int32_t piece = -1;                                  // that would own it; -1: none
  Length u, z;
  Length x;  // from the module line of the sheet whose pattern asks for it
  bool operator==(const Refusal&) const = default;
};

// A space between neighbouring screws of one row, wider than the limits allow.
struct WideSpace {
  HoleKind kind = HoleKind::Girt;
  std::int32_t row = -1, run = 0;
  Length from, to;  // u of both screws (stitch: z), from < to
  Length at;        // z of the row there (stitch: u)
  Length limit;
  bool operator==(const WideSpace&) const = default;
};

// What stands in the way of screws for a whole run.
struct RunPattern {
  std::string pattern;        // id; empty: none
  bool otherProfile = false;  // it is a pattern for another profile: no holes
  bool operator==(const RunPattern&) const = default;
};

struct WallHoles {
  WallSupports supports;
  std::optional<Length> cornerZone;  // width at both ends; absent: not known (corner_zone.h)
  std::vector<RunPattern> patterns;  // parallel to WallLayout::runs
  std::vector<HoleKind> unstated;    // kinds that sheets lie over and for which the pattern states no screws; rising
  std::vector<Hole> holes;           // by owning piece, then rising z, then along the hanging direction
  std::vector<Refusal> refusals;
  std::vector<WideSpace> wideSpaces;
  bool operator==(const WallHoles&) const = default;
};

// Of a wall that is not sheeted: nothing but the supports.
WallHoles holesOf(const Job& job, const Wall& wall, const WallLayout& layout);

// x of a hole on one of the sheets it goes through: from that sheet's module line toward its leading edge.
Length alongSheet(const WallLayout& layout, const Hole& hole, int sheet);

}  // namespace ribwright
