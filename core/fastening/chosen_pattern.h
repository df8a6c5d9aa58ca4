// The pattern of one run, row by row as its sheets ask for it.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/fastening/holes.h"
#include "core/job/job.h"

namespace ribwright {

inline constexpr std::size_t kHoleKinds = 9;

// The screws of one kind in one zone.
struct ScrewLine {
  bool stated = false;          // a row with a screw that the job holds
  std::vector<Length> offsets;  // from the module line, rising, none twice, under the cover
  std::int32_t screw = -1;      // index into Job::screws
  bool inPlace = false;
};

struct ChosenPattern {
  const ScrewPattern* pattern = nullptr;  // null: no holes on this run
  RunPattern stated;
  std::array<ScrewLine, kHoleKinds> field, corner;  // by HoleKind
  const ScrewLine& line(HoleKind kind, bool inCorner) const {
    return (inCorner ? corner : field)[static_cast<std::size_t>(kind)];
  }
};

ChosenPattern chosenPattern(const Job& job, const Wall& wall, const SheetRun& run, const Profile& profile);

// Rake, end lap, head, sill, jamb and stitch holes are drilled where they hang unless a pattern says otherwise.
bool isDrilledInPlace(HoleKind kind);

// 1.5 d from a metal edge (AISI S100-16); an odd nanometre counts as a whole one.
Length fromEdge(const Screw& screw);
// max(3 d, 1 in): holes of two screws nearer than this merge (3 d: AISI S100-16; 1 in: common practice).
Length apart(const Screw& a, const Screw& b);

}  // namespace ribwright
