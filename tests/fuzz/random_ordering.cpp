#include <algorithm>

#include "tests/fuzz/order_checker.h"

namespace ribwright::fuzz {

Job withOrdering(Job job, Dice& dice) {
  Settings& settings = job.settings;
  settings.kerf = dice.oneIn(4) ? Length() : dice.length({}, Length::millimetres(6));
  settings.leastDrop = dice.length({}, Length::feet(4));
  if (dice.oneIn(2)) settings.spares = {dice.small(0, 12), dice.small(0, 2)};
  settings.mostOrderLengths = dice.oneIn(2) ? 0 : dice.small(1, 6);
  settings.bundles = {dice.small(20, 900), dice.small(1, 30), dice.length(Length::inches(1), Length::feet(12))};
  for (Profile& profile : job.profiles) {
    if (!dice.oneIn(3)) continue;
    for (int i = dice.small(1, 3); i > 0; --i)
      profile.lengths.stocked.push_back(dice.length(Length::feet(6), Length::feet(30)));
  }
  return job;
}

std::vector<Blank> joinedBlanks(const Job& job, std::vector<Blank> alone, Dice& dice) {
  std::vector<Blank> joined;
  for (Blank& next : alone) {
    const bool joins = !joined.empty() && joined.back().sheet == next.sheet && joined.back().parts.size() == 1;
    if (!joins || !dice.oneIn(3)) {
      joined.push_back(std::move(next));
      continue;
    }
    Blank& blank = joined.back();
    BlankPart part = next.parts.front();
    part.from = blank.length + job.settings.kerf;
    part.to = part.from + next.length;
    blank.length = part.to;
    blank.way = Blank::Way::Drop;
    blank.parts.push_back(part);
  }
  return joined;
}

}  // namespace ribwright::fuzz
