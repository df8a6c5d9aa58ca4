// Trim as it is ordered and as it is cut.
#pragma once

#include "core/output/csv.h"
#include "core/takeoff/trim_cuts.h"
#include "core/units/length_text.h"

namespace ribwright {

// What to order, a line a trim, colour and stock length. bought = pieces + kerfs + ends + drops + waste, line by line
// and exactly. result: proved (no order of this trim and colour takes less steel), not proved, or to length (it is not
// stocked). at_least: the least steel that any order of this trim and colour can do with, of all its lines together.
Table trimOrderTable(const Job& job, const std::vector<TrimBatch>& batches, UnitSystem units);

// Every stick, cut by cut from its end: `at` and length, which piece it is, where that was counted, and which part of a
// spliced one. What is left of a stick is its last row: drop (kept) or waste. Stock = sum of lengths + kerfs + ends.
Table trimCutTable(const TrimTakeoff& takeoff, const std::vector<TrimBatch>& batches, UnitSystem units);

}  // namespace ribwright
