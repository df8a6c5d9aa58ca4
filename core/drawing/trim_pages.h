// Pages of trim: each kind with its section, its flat piece and its list; in which order it is set; how it is cut from
// what is sold, and why no less would do. Cutting is worked out here: it may take a second.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// Empty where a job has no trim.
std::vector<BarePage> trimPages(const Job& job, const Plan& plan, const PageFrame& frame);

}  // namespace ribwright
