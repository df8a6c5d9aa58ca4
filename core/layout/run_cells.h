// The face of one run cut into cells, and which sheets cover each.
//
// In hanging coordinates t. The face is cut upright at every break: metal edges, jambs, vertices of top and bottom,
// band limits where they meet a slope, and wherever two boundaries cross (rounded half to even to the nanometre).
// Between two breaks every boundary is straight, so that the parts are trapezoids with whole corners, and areas are
// exact. Where two boundaries cross they meet: at that break both take the height of the flatter one (a level one: its
// own height), so that rounding leaves nothing between them.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "core/layout/height_line.h"
#include "core/layout/legs.h"
#include "core/layout/sheet_run.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

// What a cell's lower or upper edge lies on.
struct EdgeSource {
  enum class Kind { Bottom, Top, Floor, Ceiling, CutLower, CutUpper, LegBottom, LegTop, LapEnd, LapTop };
  Kind kind = Kind::Bottom;
  int index = 0;    // of the cut, leg strip or lap
  int segment = 0;  // of the height line
  bool level = true;
  bool operator==(const EdgeSource&) const = default;
};

struct RunCell {
  Cell cell;  // left and right are t
  EdgeSource below, above;
  int column = 0;
  int firstSlab = 0, lastSlab = 0;  // slabs of its column, from the bottom
  Area alone;                       // part of it that no other sheet covers
};

// One slab of one sheet; of a piece that is not hung because others cover all of it.
struct NotHung {
  int module = 0, tier = 0, column = 0, slab = 0;
  auto operator<=>(const NotHung&) const = default;
};

// A sheet is one tier of one module; an ordinary module is its own tier 0.
struct SheetCells {
  int module = 0, tier = 0;
  std::vector<RunCell> cells;  // by column, then rising
};

struct RunCut {
  int cut = 0;  // index into the wall's cuts
  Length from, to;
  HeightLine lower, upper;
  bool reachesFloor = false;
};

struct RunFace {
  HeightLine bottom, top;
  std::optional<Length> floor, ceiling;  // band limits
  Length from, to;                       // sheeted face
  std::vector<RunModule> modules;
  std::vector<RunCut> cuts;      // sorted by from
  std::vector<LegStrip> strips;  // sorted by module
  std::vector<Length> lapEnds;   // rising
  std::vector<int> laps;         // per module: how many of lapEnds divide it, from the lowest
  Length lapRise;                // lower sheet above the upper sheet's end
  std::set<NotHung> notHung;
};

struct RunCells {
  std::vector<SheetCells> sheets;  // by module, then tier; only those with cells
  Area face, cut, net, laps, pieces, uncovered;
};

RunCells runCells(const RunFace& face);

}  // namespace ribwright
