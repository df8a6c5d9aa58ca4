#include "core/cutting/sharing_savings.h"

#include <stdexcept>

#include "core/job/by_id.h"

namespace ribwright {
namespace {

constexpr Blank::Way kWays[] = {Blank::Way::RakePair, Blank::Way::RipPair, Blank::Way::Drop, Blank::Way::Gang};

}  // namespace

std::vector<WaySaving> savingsOf(const Job& job, const std::vector<Blank>& blanks) {
  std::vector<WaySaving> savings;
  for (const Blank::Way way : kWays) {
    WaySaving& saving = savings.emplace_back();
    saving.way = way;
    for (const Blank& blank : blanks) {
      if (blank.way != way) continue;
      const Profile* profile = byId(job.profiles, blank.sheet.profile);
      if (!profile) throw std::invalid_argument("no profile " + blank.sheet.profile);
      ++saving.blanks;
      saving.saved += blank.saved;
      saving.steel += blank.saved * profile->metalWidth();
    }
  }
  return savings;
}

Job withWayAlone(const Job& job, Blank::Way way) {
  Job made = job;
  Sharing& sharing = made.settings.sharing;
  if (sharing.reach == Sharing::Reach::Off) sharing.reach = Sharing::Reach::On;
  sharing.rakePairs = way == Blank::Way::RakePair;
  sharing.ripPairs = way == Blank::Way::RipPair;
  sharing.drops = way == Blank::Way::Drop;
  sharing.gangs = way == Blank::Way::Gang;
  return made;
}

std::vector<WaySaving> savingsByWay(const Job& job, const std::vector<const WallLayout*>& layouts) {
  std::vector<WaySaving> savings;
  for (std::size_t i = 0; i < std::size(kWays); ++i) {
    const Job alone = withWayAlone(job, kWays[i]);
    savings.push_back(savingsOf(alone, shareBlanks(alone, layouts))[i]);
  }
  return savings;
}

}  // namespace ribwright
