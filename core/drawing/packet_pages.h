// All pages of a packet in the order of their use: wall by wall the elevation, then what is measured and drilled by; at the end what is
// ordered and cut for all of them.
#pragma once

#include <string_view>
#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// Numbered through. `plan` must be of `job`.
std::vector<Page> packetPages(const Job& job, const Plan& plan, PaperSize paper, const Words& words = Words::of("en"));

// Those of one wall, with the numbers that they have among all; empty for a letter that the job has not.
std::vector<Page> packetPages(const Job& job, const Plan& plan, std::string_view letter, PaperSize paper,
                              const Words& words = Words::of("en"));

}  // namespace ribwright
