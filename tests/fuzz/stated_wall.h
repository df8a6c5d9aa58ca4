// What the trade's rules say of a wall before any sheet: its face, its cut regions, the hand it hangs by.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/layout/wall_layout.h"
#include "tests/fuzz/complaints.h"
#include "tests/fuzz/stated_line.h"

namespace ribwright::fuzz {

struct StatedFace {
  Nm width = 0;
  StatedLine steel, top, concrete, bottom;
  std::optional<PlanLine> line;
  std::optional<Nm> ridge;
};

StatedFace statedFace(const Job& job, const Wall& wall);

// A region without metal. `lower` of an opening that reaches the floor is level at kBelowAll.
struct StatedCut {
  std::string id;
  bool penetration = false, reachesFloor = false;
  bool straight = true;  // upright edges: an opening, or a rectangular penetration
  Nm left = 0, right = 0;
  StatedLine lower, upper;
  Nm low() const { return lower.segments.front().z0; }
  Nm high() const { return upper.segments.front().z0; }
};

// u of the left jamb's steel.
Nm statedJamb(const Wall& wall, Nm width, const Opening& opening);
Nm statedCentre(const Wall& wall, Nm width, const Penetration& penetration);
// Openings and rectangular penetrations exactly. Of a round one the outline is taken from `found`, and complaints say
// where it is not the regular 24-gon about its circle.
std::vector<StatedCut> statedCuts(const Job& job, const Wall& wall, const StatedFace& face,
                                  const std::vector<CutRegion>& found, Complaints& complaints);

struct StatedHand {
  Hand hand = Hand::LeftToRight;
  HandReason reason = HandReason::Default;
  bool againstRule = false;
  bool certain = true;  // false: so near a limit that floating point cannot say
};

StatedHand statedHand(const Job& job, const Wall& wall, const StatedFace& face);

}  // namespace ribwright::fuzz
