// A run laid out from where its start rule says, or from the best of all starts that are tried.
#pragma once

#include "core/layout/run_layout.h"
#include "core/layout/start_rank.h"

namespace ribwright {

RunResult layOutFromStart(const RunTask& task);

StartRank rankOf(const RunTask& task, const RunResult& result);

}  // namespace ribwright
