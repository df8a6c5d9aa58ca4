// How all trim of a job is cut from what is sold: the fewest stock lengths, proved, stick by stick.
//
// Cutting is worked out on demand: it may take a second.
#pragma once

#include <string>
#include <vector>

#include "core/cutting/stock_cutter.h"
#include "core/takeoff/trim_pieces.h"

namespace ribwright {

// A part cut from a stick.
struct TrimCut {
  int piece = 0, part = 0;  // index in TrimTakeoff::pieces, and in TrimPiece::parts
  Length at;                // of its beginning, from the stick's end where cutting begins
  Length length;
  bool operator==(const TrimCut&) const = default;
};

// One stock length. stock = sum of its cuts + kerfs + ends + drop + waste, exactly.
struct TrimStick {
  int number = 0;  // 1, 2 ... of this trim and colour
  Length stock;
  std::vector<TrimCut> cuts;  // the longest first; a kerf between each two
  Length kerfs;               // between its cuts, and before a drop
  Length ends;                // lost at both ends
  Length drop;                // what is left, where it is at least settings.leastDrop: kept
  Length waste;               // what is left, where it is less
  Length restAt() const { return stock - (ends - half(ends)) - drop - waste; }  // where what is left begins
  bool operator==(const TrimStick&) const = default;
};

// All of one trim in one colour.
struct TrimBatch {
  std::string trim, colour;
  std::vector<TrimStick> sticks;  // the longest first
  // What was asked of the stock cutter, in nanometres, and its answer with the proof. A trim that is not stocked is
  // ordered to length, a stick a part: both are empty.
  CuttingList list;
  CuttingPlan plan;
  bool madeToLength = false;
  std::vector<Fault>
      faults;  // why the cutter gave no plan: then each part has a stick of its own, and nothing is proved
  bool operator==(const TrimBatch&) const = default;

  Length total(Length TrimStick::*what) const;  // over the sticks: bought, kerfs, ends, drop, waste
  Length cut() const;                           // sum of the parts
  Length atLeast() const;                       // no sticks that hold all parts are shorter together
  bool proved() const { return madeToLength || (faults.empty() && plan.proved()); }
};

// By trim as the job lists them, then colour. `options` as for cutStock, for each batch on its own.
std::vector<TrimBatch> trimBatches(const Job& job, const TrimTakeoff& takeoff, const CuttingOptions& options = {});

// girth x length x (thickness x 7850 kg/m3 + 275 g/m2 of metal coating and paint, both faces together: as EN 10346
// Z275)
double trimKilograms(const Trim& trim, Length length);

}  // namespace ribwright
