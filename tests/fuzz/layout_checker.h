// The independent proof of a layout. It reads the trade's rules from the job, and from the plan nothing but the
// resulting structs; it calls nothing of core/layout. Heights and areas are exact integers, points are judged against
// unrounded lines.
#pragma once

#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"
#include "tests/fuzz/complaints.h"
#include "tests/fuzz/dice.h"
#include "tests/fuzz/run_geometry.h"

namespace ribwright::fuzz {

// A wall with all that follows for it by the checker's own reading.
struct CheckedWall {
  const Job& job;
  const Wall& wall;
  const WallLayout& layout;
  StatedFace face;
  StatedHand hand;
  std::vector<StatedCut> cuts;
  std::vector<RunGeometry> runs;  // parallel to layout.runs; empty when the runs themselves are wrong
};

CheckedWall readWall(const Job& job, const Wall& wall, const WallLayout& layout, Complaints& complaints);

// The face, the hand and the cut regions of the trade's rules.
void checkStatement(const CheckedWall& wall, Complaints& complaints);
// Modules, starts, hanging numbers: the trade's rules. Fills wall.runs.
void checkModules(CheckedWall& wall, Complaints& complaints);
// Cells and the exact account, upright slab by slab: the trade's rules.
void checkSlabs(const CheckedWall& wall, std::size_t run, Complaints& complaints);
// Connection, extents, flags, blank: the trade's rules.
void checkPieces(const CheckedWall& wall, Complaints& complaints);
// Hanging order and marks: the trade's rules.
void checkMarks(const CheckedWall& wall, Complaints& complaints);
// End laps where a sheet would be too long: the trade's rules.
void checkEndLaps(const CheckedWall& wall, Complaints& complaints);
// Every piece ordered once, long enough, as its band's sheet: the trade's rules.
void checkOrder(const Job& job, const Plan& plan, Complaints& complaints);
// Closed, clockwise, simple, no vertex on a straight side, area of the cells.
void checkRings(const CheckedWall& wall, Complaints& complaints);
// Points at random and beside every edge: which sheets have metal there, by the rings.
void checkPoints(const CheckedWall& wall, Dice& dice, Complaints& complaints);

// All of it for all walls.
Complaints checkLayout(const Job& job, const Plan& plan, Dice& dice);

}  // namespace ribwright::fuzz
