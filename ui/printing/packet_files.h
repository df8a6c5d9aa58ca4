// The whole packet of a job in memory: tables and pages.
#pragma once

#include <vector>

#include "core/drawing/paper.h"
#include "core/job/job.h"
#include "core/output/packet_tables.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"

namespace ribwright {

// In the order they are to be written, contents.csv last. `units` may differ from the job's own. `plan` must be of
// `job`. Needs a QGuiApplication. Faults: the pages could not be painted.
Outcome<std::vector<PacketFile>> packetFiles(const Job& job, const Plan& plan, UnitSystem units, PaperSize paper);

}  // namespace ribwright
