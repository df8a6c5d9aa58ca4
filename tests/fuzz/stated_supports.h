// The steel of a wall as the plans state it, part by part: the wall is cut at every place where anything begins or
// ends, and of each part it is said what stands there. The checker's own reckoning.
#pragma once

#include <string>
#include <vector>

#include "tests/fuzz/screwed_wall.h"

namespace ribwright::fuzz {

struct SupportPart {
  SupportKind kind = SupportKind::Girt;
  std::string id;  // of the row it belongs to
  Stretch stretch;
  // The line on which its heights are measured, or its concrete, is one straight part: parts of unlike `straight` do
  // not join.
  Nm straight = 0;
};

// Base, eave, rake; girts with what stands in their way; heads and sills.
std::vector<SupportPart> statedSupports(const ScrewedWall& wall);
std::vector<JambFlange> statedJambs(const ScrewedWall& wall);

// The steel of an opening's frame, as it is typed.
struct OpeningSteel {
  const Opening* opening = nullptr;
  Nm left = 0, right = 0, sill = 0, head = 0;
  bool floor = false;
  FrameFace frame;
};
std::vector<OpeningSteel> openingSteels(const ScrewedWall& wall);

// Parts of girts, with columns and jambs in their way.
void addGirtParts(const ScrewedWall& wall, std::vector<SupportPart>& parts);

}  // namespace ribwright::fuzz
