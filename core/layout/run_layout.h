// One run laid out: modules, pieces and the exact account of its face.
#pragma once

#include <vector>

#include "core/job/job.h"
#include "core/layout/hanging_frame.h"
#include "core/layout/wall_layout.h"

namespace ribwright {

struct RunTask {
  const Job* job = nullptr;
  const Wall* wall = nullptr;
  const WallFace* face = nullptr;
  const std::vector<CutRegion>* cuts = nullptr;
  const Profile* profile = nullptr;
  int band = 0;
  HangingFrame frame;
  Length reachStart, reachEnd;
  std::optional<Length> floor, ceiling;
  int firstNumber = 1;  // hanging number of its first sheet
};

struct RunResult {
  SheetRun run;
  std::vector<Piece>
      pieces;  // run, mark and hang order are left to the caller; module and tier are set; in hanging order
  bool startFollowed = true;  // the start rule had what it goes by
};

// With its first module line `offset` from the start corner (0 <= offset < cover).
RunResult layOutRun(const RunTask& task, Length offset);

}  // namespace ribwright
