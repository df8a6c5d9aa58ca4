#include <algorithm>

#include "core/job/job_tables.h"
#include "tests/fuzz/random_job.h"

namespace ribwright::fuzz {

int FieldDice::whole(int lowest, int highest) { return oneIn(4) ? of({lowest, highest}) : small(lowest, highest); }

Length FieldDice::within(const LengthRange& range) {
  const Length lowest = range.lowestExcluded ? range.lowest + Length::nanometres(1) : range.lowest;
  if (oneIn(12)) return of({lowest, range.highest});
  const Length low = std::max(lowest, Length::feet(-100)), high = std::min(range.highest, Length::feet(100));
  const Length found = length(low, high);
  return found < low || found > high ? low : found;
}

Angle FieldDice::degrees(std::int64_t lowest, std::int64_t highest) {
  if (oneIn(2)) return Angle::degrees(between(lowest, highest));
  return Angle{between(lowest * 1'000'000, highest * 1'000'000)};
}

Slope FieldDice::slope() {
  Slope slope;
  if (oneIn(3)) {
    slope.as = Slope::As::Angle;
    slope.angle = degrees(0, 89);
    return slope;
  }
  slope.run = of({Length::inches(12), Length::millimetres(250), within({Length::inches(1), farthest, false})});
  slope.rise = length(Length(), std::min(slope.run * 50, farthest));
  slope.rise = std::clamp(slope.rise, Length(), slope.run * 50);
  return slope;
}

std::string FieldDice::pieces(int most) {
  static const std::vector<std::string> alphabet = {"a", "Z", "7",  " ",    "\"", "\\", "/",
                                                    "'", "é", "漢", "🙂", "{",  "-",  "\u2028"};
  std::string text;
  for (int left = small(0, most); left > 0; --left) text += of(alphabet);
  return text;
}

std::string FieldDice::line() { return oneIn(20) ? std::string(200, 'x') : pieces(12); }

std::string FieldDice::note() {
  std::string text = pieces(20);
  for (int left = small(0, 3); left > 0; --left) {
    text += of({"\n", "\t"});
    text += pieces(20);
  }
  return text;
}

std::string FieldDice::id() {
  std::string text = pieces(6);
  text.insert(0, of({"g", "é", "\""}));
  text += std::to_string(++ids_);
  return text;
}

std::vector<Length> FieldDice::rising(int most) {
  std::vector<Length> places;
  Length place;
  for (int left = small(0, most); left > 0; --left) {
    place += within({Length(), Length::feet(80), true});
    places.push_back(place);
  }
  return places;
}

}  // namespace ribwright::fuzz
