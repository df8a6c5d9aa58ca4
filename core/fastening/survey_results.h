// What follows of one wall from what was measured of it beside its girts' heights, as data: for paper and window.
#pragma once

#include <optional>
#include <vector>

#include "core/fastening/chalk_snaps.h"
#include "core/fastening/girt_sag.h"
#include "core/fastening/squareness.h"

namespace ribwright {

struct SurveyResults {
  std::vector<GirtSag> sags;  // without props; also where they are in place
  std::optional<ChalkSnaps> chalk;
  std::vector<ShortSheet> shortSheets;  // of that chalk line
  std::optional<Squareness> square;
  bool operator==(const SurveyResults&) const = default;
};

SurveyResults surveyResults(const Job& job, const Wall& wall, const WallLayout& layout, const WallSupports& supports);

}  // namespace ribwright
