// The plain elevation of a wall: its sheets as they hang, seen from outside, with marks, lengths, openings and
// dimensions.
#pragma once

#include <string_view>
#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// The pages of all walls in the job's order, numbered through: of each wall the drawing, broken at module lines where
// it is too long for the paper, then what of its tables found no room under it. At the largest usual scale at which
// sheets can be named and the fewest pages are needed. A wall that could not be laid out gives one page that says so.
// `plan` must be of `job`. Each names the fingerprints of the job and of its wall.
std::vector<Page> elevationPages(const Job& job, const Plan& plan, PaperSize paper,
                                 const Words& words = Words::of("en"));

// The pages of one wall without their frames; `before`: how many pages stand before them.
std::vector<BarePage> bareElevation(const Job& job, const Plan& plan, std::size_t wall, const PageFrame& frame,
                                    int before);

// Those of one wall, with the numbers that they have among all; empty for a letter that the job has not.
std::vector<Page> elevationPages(const Job& job, const Plan& plan, std::string_view letter, PaperSize paper,
                                 const Words& words = Words::of("en"));

}  // namespace ribwright
