#include "core/takeoff/trim_splices.h"

#include <algorithm>

namespace ribwright {
namespace {

constexpr Length shortestRest = Length::feet(1);  // common practice: a stub neither lies straight nor sheds water

void evenLastTwo(std::vector<Length>& lengths) {
  Length& last = lengths.back();
  Length& before = lengths[lengths.size() - 2];
  const Length both = last + before;
  before = half(both);
  last = both - before;
}

}  // namespace

Length longestPart(const Trim& trim) {
  if (trim.stocked.empty()) return {};
  const Length longest = *std::max_element(trim.stocked.begin(), trim.stocked.end()) - trim.endTrim;
  return longest >= shortestRest && longest >= trim.spliceLap * 2 ? longest : Length();
}

std::vector<TrimPart> splicedParts(Length length, const Trim& trim) {
  const Length longest = longestPart(trim);
  if (longest == Length() || length <= longest) return {{length, Length()}};
  // Each part but the last covers a stocked length less its lap.
  const Length covered = longest - trim.spliceLap;
  const std::int64_t count = wholeTimes(length - trim.spliceLap - Length::nanometres(1), covered) + 1;
  std::vector<Length> lengths(static_cast<std::size_t>(count - 1), longest);
  lengths.push_back(length - covered * (count - 1));
  if (lengths.back() < shortestRest) evenLastTwo(lengths);
  std::vector<TrimPart> parts;
  Length at;
  for (const Length one : lengths) {
    parts.push_back({one, at});
    at += one - trim.spliceLap;
  }
  return parts;
}

}  // namespace ribwright
