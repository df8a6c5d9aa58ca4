// The independent proof of shared blanks. It reads the trade's rules from the job, the pieces from the layouts, and of
// the blanks nothing but their structs and placed outlines; it calls nothing of core/cutting. Whole numbers alone.
#pragma once

#include <vector>

#include "core/cutting/blank.h"
#include "core/cutting/blank_cuts.h"
#include "core/plan/plan.h"
#include "tests/fuzz/complaints.h"

namespace ribwright::fuzz {

struct SharedBlank {
  Blank blank;
  BlankCuts cuts;  // of a sheet bought `spare` longer than it must be
  Length spare;
};

// Every piece in one blank; each part turned back is the piece to be hung; parts within the blank and a kerf apart; the
// rules of who may share; a rake pair no longer than it must be; nothing left alone that could have saved.
Complaints checkSharing(const Job& job, const Plan& plan, const std::vector<SharedBlank>& blanks);

}  // namespace ribwright::fuzz
