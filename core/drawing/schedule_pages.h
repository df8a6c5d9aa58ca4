// Pages of the whole job for ordering and cutting: schedules.pdf.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// In the order of their use, without frames; each says BarePage::wholeJob. Empty where there is nothing to order.
std::vector<BarePage> bareSchedulePages(const Job& job, const Plan& plan, const PageFrame& frame);

// Numbered through. `plan` must be of `job`.
std::vector<Page> schedulePages(const Job& job, const Plan& plan, PaperSize paper,
                                const Words& words = Words::of("en"));

}  // namespace ribwright
