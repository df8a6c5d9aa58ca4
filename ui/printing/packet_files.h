// The whole packet of a job in memory: tables and pages.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/paper.h"
#include "core/job/job.h"
#include "core/output/packet_tables.h"
#include "core/plan/plan.h"
#include "core/units/outcome.h"
#include "ui/printing/packet_progress.h"

namespace ribwright {

// How a packet is wanted; none of it need be as in the job.
struct PacketForm {
  UnitSystem units = UnitSystem::FeetInches;
  PaperSize paper = PaperSize::Letter;
  std::string language = "en";  // of paper and findings
};

// In the order they are to be written, contents.csv last. `plan` must be of `job`. Needs a QGuiApplication; may run in
// any one thread when paperFontFamily() was called in the application's own thread before. Faults: the pages could not
// be painted; packetStopped() alone when `progress` stopped the work.
Outcome<std::vector<PacketFile>> packetFiles(const Job& job, const Plan& plan, const PacketForm& form,
                                             const PacketProgress& progress = {});

Fault packetStopped();

}  // namespace ribwright
