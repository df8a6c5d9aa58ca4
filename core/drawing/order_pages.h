// The sheet order on paper: lines by class, and where the steel goes. For the office and the supplier.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/bare_page.h"
#include "core/drawing/paper_table.h"

namespace ribwright {

// None where nothing is ordered. Pages of the whole job.
std::vector<BarePage> orderPages(const Job& job, const Plan& plan, const PageFrame& frame);

// How the order is packed: where each bundle is set down, and its sheets from the top. For the truck and the site.
std::vector<BarePage> bundlePages(const Job& job, const Plan& plan, const PageFrame& frame);

// Tables one below the other, going on to the next page where one finds no room. `subject`: of each page.
std::vector<BarePage> tablePages(const std::vector<PaperTable>& tables, const std::string& subject,
                                 const PageFrame& frame, const std::string& figures);

// "rib-36, 0.5 mm, barn red".
std::string classWords(const SheetClass& sheet, const PageFrame& frame);

// Marks over as many lines as they need, each no longer than about `letters`.
std::vector<std::string> brokenMarks(const std::vector<std::string>& marks, std::size_t letters);

}  // namespace ribwright
