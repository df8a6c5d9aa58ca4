// Pages of the blanks that give two sheets or more: how each is cut.
#pragma once

#include <vector>

#include "core/drawing/bare_page.h"

namespace ribwright {

// In the order of the blanks, as many on a page as find room; empty where nothing shares.
std::vector<BarePage> sharingPages(const Job& job, const Plan& plan, const PageFrame& frame);

}  // namespace ribwright
