// Which pictures of the plans lie over which walls, kept with the window's settings by the job's file: they say nothing
// of the building, so the job's file does not hold them.
#pragma once

#include <QString>
#include <map>
#include <string>

#include "ui/board/laid_plan.h"

namespace ribwright {

using LaidPlans = std::map<std::string, LaidPlan>;  // by the wall's letter

// Of a job's file; what cannot be read any more is left out.
LaidPlans keptLaidPlans(const QString& jobPath);
// In place of what was kept for it.
void keepLaidPlans(const QString& jobPath, const LaidPlans& plans);

}  // namespace ribwright
