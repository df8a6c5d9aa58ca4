#include "core/fastening/spacing_limits.h"

#include <algorithm>
#include <optional>

namespace ribwright {

namespace {

SpacingLimits setOf(ScrewPattern::Limits limits) {
  SpacingLimits set;
  switch (limits) {
    case ScrewPattern::Limits::PlansOwn:
      break;
    case ScrewPattern::Limits::Ufgs07413:
      set.atSupports = set.atEndLaps = Length::inches(8);
      set.atSideLaps = Length::inches(18);
      set.source = "UFGS 07413 3.1.1.1";
      break;
    case ScrewPattern::Limits::NzCode:
      set.endLap = Length::millimetres(150);
      set.source = "NZ Metal Roof and Wall Cladding Code of Practice";
      break;
    case ScrewPattern::Limits::Branz146:
      set.betweenRows = Length::millimetres(1200);
      set.source = "BRANZ Build 146";
      break;
  }
  return set;
}

}  // namespace

SpacingLimits spacingLimits(const ScrewPattern& pattern) {
  SpacingLimits limits = setOf(pattern.limits);
  bool ownGoverns = false;
  for (std::optional<Length>* limit : {&limits.atSupports, &limits.atEndLaps}) {
    if (pattern.spacingLimit <= Length() || (*limit && **limit <= pattern.spacingLimit)) continue;
    *limit = pattern.spacingLimit;
    ownGoverns = true;
  }
  if (ownGoverns) limits.source.append(limits.source.empty() ? "" : ", ").append("the plans");
  return limits;
}

std::int64_t evenSpaces(Length length, Length limit) {
  if (length <= Length()) return 0;
  return limit > Length() ? -wholeTimes(-length, limit) : 1;
}

std::int64_t fewestPerCover(Length cover, Length limit) { return std::max(evenSpaces(cover, limit), std::int64_t{1}); }

// The only row between goes in up to 2.4 m, which is twice the limit, and also where the limit alone would ask for
// none.
std::int64_t rowsBetween(Length height, Length limit) {
  return std::max(evenSpaces(height, limit) - 1, std::int64_t{1});
}

}  // namespace ribwright
