// All pages for measuring and drilling.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/sheet_lying.h"

namespace ribwright {

// Of one wall in the order of use, without frames: props and chalk line, survey blank, marking stick, held batches with
// their reasons, a template for each cleared batch, full-scale strips, module marks. Empty for a wall that is not
// sheeted or could not be laid out.
std::vector<BarePage> bareDrillPages(const Job& job, const Plan& plan, std::size_t wall, const PageFrame& frame,
                                     Lying lying = Lying::FaceUp);

// Of all walls in the job's order, numbered through. `plan` must be of `job`.
std::vector<Page> drillPages(const Job& job, const Plan& plan, PaperSize paper, const Words& words = Words::of("en"),
                             Lying lying = Lying::FaceUp);

}  // namespace ribwright
