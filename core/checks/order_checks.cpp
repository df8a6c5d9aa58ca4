#include "core/checks/order_checks.h"

#include <algorithm>
#include <stdexcept>

#include "core/job/by_id.h"

namespace ribwright {

std::vector<Finding> findingsOfOrder(const Job& job, const std::vector<const WallLayout*>& layouts,
                                     const SheetOrder& order) {
  std::vector<Finding> findings;
  for (const OrderedSheet& sheet : order.sheets) {
    const OrderLine& line = order.lines[static_cast<std::size_t>(sheet.line)];
    const Profile* profile = byId(job.profiles, line.profile);
    if (!profile) throw std::invalid_argument("order: no profile " + line.profile);
    const auto& stocked = profile->lengths.stocked;
    if (stocked.empty()) continue;
    const Length longest = *std::max_element(stocked.begin(), stocked.end());
    if (sheet.used <= longest) continue;
    const WallLayout& layout = *layouts[static_cast<std::size_t>(sheet.first.wall)];
    findings.push_back({Grade::Stop,
                        "longer-than-stock",
                        layout.letter,
                        layout.pieces[static_cast<std::size_t>(sheet.first.piece)].mark,
                        {{"length", sheet.used}, {"longest", longest}},
                        "the sheet's lengths in stock"});
  }
  return findings;
}

}  // namespace ribwright
