// A run laid out from where its start rule says, or from the best of all starts that are tried.
#pragma once

#include "core/layout/run_layout.h"

namespace ribwright {

RunResult layOutFromStart(const RunTask& task);

// How good a start is; smaller is better, compared in this order: stops, seams near jambs, narrow rips,
// sheets, different lengths, waste, smallest offset).
struct StartRank {
  int stops = 0, seamsNearJambs = 0, narrowRips = 0, sheets = 0, lengths = 0;
  Area waste;
  Length offset;
  auto operator<=>(const StartRank&) const = default;
};

StartRank rankOf(const RunTask& task, const RunResult& result);

}  // namespace ribwright
