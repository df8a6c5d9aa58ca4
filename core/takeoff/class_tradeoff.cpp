#include "core/takeoff/class_tradeoff.h"

#include <stdexcept>

#include "core/job/by_id.h"
#include "core/takeoff/sold_lengths.h"

namespace ribwright {

std::vector<ClassTradeOff> classTradeOffs(const Job& job, const SheetOrder& order) {
  std::vector<ClassTradeOff> all;
  const std::span blanks(order.blanks);
  for (std::size_t from = 0, to = 0; from < blanks.size(); from = to) {
    while (to < blanks.size() && blanks[to].sheet == blanks[from].sheet) ++to;
    const SheetClass& sheet = blanks[from].sheet;
    const Profile* profile = byId(job.profiles, sheet.profile);
    if (!profile) throw std::invalid_argument("order lengths: no profile " + sheet.profile);
    auto wanted = wantedLengths(*profile, blanks.subspan(from, to - from));
    if (wanted.empty()) continue;
    all.push_back({sheet, profile->metalWidth(), lengthTradeOff(std::move(wanted), job.settings.spares)});
  }
  return all;
}

}  // namespace ribwright
