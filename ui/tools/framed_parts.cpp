#include "ui/tools/framed_parts.h"

#include "core/editing/opening_edits.h"
#include "core/editing/penetration_edits.h"

namespace ribwright {

namespace {

bool holds(const FaceBox& frame, const FaceBox& box) {
  return box.left >= frame.left && box.right <= frame.right && box.bottom >= frame.bottom && box.top <= frame.top;
}

}  // namespace

std::vector<Part> framedParts(const WallPlan& plan, const Wall& wall, const FaceBox& frame) {
  std::vector<Part> parts;
  for (const Opening& opening : wall.openings) {
    const auto box = openingBox(plan.reads, wall, opening);
    if (box && holds(frame, box.value())) parts.push_back({Part::Kind::Opening, wall.letter, opening.id});
  }
  for (const Penetration& hole : wall.penetrations) {
    const auto box = penetrationBox(plan.reads, wall, hole);
    if (box && holds(frame, box.value())) parts.push_back({Part::Kind::Penetration, wall.letter, hole.id});
  }
  return parts;
}

}  // namespace ribwright
