// Where to snap the chalk line, from what was measured of the slab edge, so that sheets that end at it cover the edge
// everywhere; and where they leave it open as things stand.
//
// Heights are z, from the datum (the top of concrete by the plans), places u. The measured edge is linear between
// stations, beyond the first and the last nothing is known. At a step of the concrete the edge steps as the plans say,
// and its deviation goes on. Under an opening that reaches the floor no sheet has to cover it.
//
// Sheets hang below the concrete by what the base form asks: overhang: the drop; notch: the ledge's depth less the gap
// above it; base trim: less than nothing, where its shelf stands above the concrete. The line is one level for each
// level run of the concrete.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// One level run of the concrete, as far as its edge was measured.
struct ChalkRun {
  Length from, to;
  Length line;           // the highest mark of the tape at which sheets hang below the edge by what is asked everywhere
  Length lowest;         // of the edge
  bool onLedge = false;  // notch: at that line sheets would somewhere stand on the ledge, which follows the edge
  bool operator==(const ChalkRun&) const = default;
};

// The line at a column or station, to be measured down from the edge there.
struct ChalkMark {
  Length u;
  std::int32_t column = 0;  // its number; 0: a station
  Length slab, line;
  Length below() const { return slab - line; }
  bool operator==(const ChalkMark&) const = default;
};

// Where the edge lies lower than the sheets end.
struct OpenEdge {
  Length from, to;   // to the nearest nanometre where the edge slopes past the sheets' end
  Length by, at;     // at most, and where first
  Length end;        // z at which sheets end
  std::int32_t run;  // index into ChalkSnaps::runs
  bool operator==(const OpenEdge&) const = default;
};

struct ChalkSnaps {
  Length asked;                  // by how much sheets are to hang below the edge
  std::vector<ChalkRun> runs;    // from left to right
  std::vector<ChalkMark> marks;  // from left to right; at a step the run on the right
  // Overhang and notch: where sheets that end at the stated chalk line leave the edge open; where none is stated, or
  // the concrete has steps, sheets that end where the plans say. A base trim covers the edge itself.
  std::vector<OpenEdge> open;
  bool operator==(const ChalkSnaps&) const = default;
};

// Nothing: the wall has no sheets, they end on a wall, or the edge was not measured at two stations.
std::optional<ChalkSnaps> chalkSnaps(const Job& job, const Wall& wall, const WallLayout& layout);

// A piece whose blank, as it is ordered, would not reach down to the line of its run.
struct ShortSheet {
  std::int32_t piece = 0;  // index into WallLayout::pieces
  Length by;               // its blank is this much too short
  bool operator==(const ShortSheet&) const = default;
};

// Pieces that end where the plans say sheets end over one of the runs, left out those that hang already.
std::vector<ShortSheet> shortOfLine(const Job& job, const Wall& wall, const WallLayout& layout,
                                    const ChalkSnaps& snaps);

}  // namespace ribwright
