// From what is stated of a building to the face of each wall: its width, the line of the steel, and where sheets end.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/height_line.h"
#include "core/units/outcome.h"

namespace ribwright {

struct WallFace {
  std::string letter;
  Length width;                  // u runs from 0 to width
  HeightLine steel;              // z of the steel line (outside top of eave purlin or rake angle)
  HeightLine top;                // z where sheets end: steel less hold-down
  HeightLine bottom;             // z where sheets end at the bottom
  HeightLine concrete;           // z of the concrete (0, or the steps of the base)
  std::optional<PlanLine> line;  // place in the plan; absent for a free wall without one
  std::optional<Length> ridge;   // u of the highest inner vertex from which the steel falls on a slope to both sides
  bool operator==(const WallFace&) const = default;
};

// The face of one wall. Faults: what has no meaning (no top stated, outline too short for the letter ...).
Outcome<WallFace> wallFace(const Job& job, const Wall& wall);

// The edge of the outline that carries this wall's letter (A is the first edge), or the wall's own line.
std::optional<PlanLine> planLine(const Job& job, const Wall& wall);

// u of columns 1, 2 ...; none while no bays are stated: one column alone divides nothing.
std::vector<Length> columnsOf(const ColumnGrid& columns);
// Whether column n, counted from 1, is one of them.
bool hasColumn(const ColumnGrid& columns, int n);
// u of column n (1, 2 ...); absent when the grid has no such column.
std::optional<Length> columnAt(const ColumnGrid& columns, int n);

// u of the left jamb's steel (or, for a penetration, of the centre); absent when its column does not exist.
std::optional<Length> leftJamb(const Wall& wall, Length wallWidth, const Opening& opening);
std::optional<Length> centreOf(const Wall& wall, Length wallWidth, const Penetration& penetration);

}  // namespace ribwright
