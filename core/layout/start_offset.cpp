#include "core/layout/start_offset.h"

#include <algorithm>

#include "core/job/by_id.h"

namespace ribwright {

namespace {

// The lap stands wholly beyond the cut, inside the opening, with one metal edge on the cut line: so no leg is left
// beside it.
Length beyondJamb(const CutRegion& cut, bool jambNearStart, const Profile& profile, const HangingFrame& frame) {
  const Length one = frame.toHanging(cut.left), other = frame.toHanging(cut.right);
  return jambNearStart ? std::min(one, other) + profile.over : std::max(one, other) - profile.under;
}

std::optional<Length> atJamb(const Start& start, const Profile& profile, const StartPlace& place) {
  const CutRegion* cut = byId(place.cuts, start.opening);
  if (!cut) return std::nullopt;
  const bool leftJamb = start.side == Start::Side::Left;
  const bool nearStart = leftJamb == (place.frame.hand == Hand::LeftToRight);
  return rest(beyondJamb(*cut, nearStart, profile, place.frame), profile.cover);
}

}  // namespace

Length equalRipsOffset(Length length, Length cover) {
  const std::int64_t full = std::max<std::int64_t>(0, wholeTimes(length, cover) - 1);
  return rest(half(length - cover * full), cover);
}

std::optional<Length> startOffset(const Start& start, const Profile& profile, const StartPlace& place) {
  switch (start.rule) {
    case Start::Rule::Flush:
      return rest(profile.over, profile.cover);
    case Start::Rule::ModuleLine:
      return Length();
    case Start::Rule::EqualRips:
      return equalRipsOffset(place.length, profile.cover);
    case Start::Rule::SeamOnRidge:
      if (!place.ridge) return std::nullopt;
      return rest(*place.ridge, profile.cover);
    case Start::Rule::SheetOnRidge:
      if (!place.ridge) return std::nullopt;
      return rest(*place.ridge - half(profile.cover), profile.cover);
    case Start::Rule::SeamAtJamb:
      return atJamb(start, profile, place);
    case Start::Rule::Typed:
      return rest(start.offset, profile.cover);
    case Start::Rule::BestOfSearch:
      return std::nullopt;
  }
  return std::nullopt;
}

std::vector<Length> startCandidates(const Profile& profile, const StartPlace& place, Length step, Length jambLimit) {
  std::vector<Length> candidates;
  for (Length at; at < profile.cover; at += step) candidates.push_back(at);
  const auto add = [&](Length line) { candidates.push_back(rest(line, profile.cover)); };
  add(profile.over);
  add(place.length);
  if (place.ridge) add(*place.ridge);
  for (const CutRegion& cut : place.cuts) {
    if (cut.penetration) continue;
    for (const Length edge : {place.frame.toHanging(cut.left), place.frame.toHanging(cut.right)}) {
      add(edge - jambLimit);
      add(edge);
      add(edge + jambLimit);
    }
    add(beyondJamb(cut, true, profile, place.frame));
    add(beyondJamb(cut, false, profile, place.frame));
  }
  std::sort(candidates.begin(), candidates.end());
  candidates.erase(std::unique(candidates.begin(), candidates.end()), candidates.end());
  return candidates;
}

}  // namespace ribwright
