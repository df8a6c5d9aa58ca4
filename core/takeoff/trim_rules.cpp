#include "core/takeoff/trim_rules.h"

#include <algorithm>

namespace ribwright {

bool speaksOf(TrimRule::Of of, Opening::Kind kind) {
  using Kind = Opening::Kind;
  const bool door = kind == Kind::WalkDoor || kind == Kind::OverheadDoor || kind == Kind::SlidingDoor;
  switch (of) {
    case TrimRule::Of::AnyOpening:
      return true;
    case TrimRule::Of::Doors:
      return door;
    case TrimRule::Of::NotDoors:
      return !door;
    case TrimRule::Of::WalkDoors:
      return kind == Kind::WalkDoor;
    case TrimRule::Of::OverheadDoors:
      return kind == Kind::OverheadDoor;
    case TrimRule::Of::SlidingDoors:
      return kind == Kind::SlidingDoor;
    case TrimRule::Of::Windows:
      return kind == Kind::Window;
    case TrimRule::Of::Louvres:
      return kind == Kind::Louvre;
    case TrimRule::Of::Framed:
      return kind == Kind::Framed;
  }
  return false;
}

int narrowness(TrimRule::Of of) {
  if (of == TrimRule::Of::AnyOpening) return 0;
  return of == TrimRule::Of::Doors || of == TrimRule::Of::NotDoors ? 1 : 2;
}

std::vector<const TrimRule*> rulesAt(const std::vector<TrimRule>& rules, const TrimPlace& place) {
  std::vector<const TrimRule*> found;
  int narrowest = 0;
  for (const TrimRule& rule : rules) {
    if (rule.where != place.where || (place.kind && !speaksOf(rule.of, *place.kind))) continue;
    const int narrow = place.kind ? narrowness(rule.of) : 0;
    if (narrow > narrowest) found.clear();
    narrowest = std::max(narrowest, narrow);
    if (narrow == narrowest) found.push_back(&rule);
  }
  return found;
}

bool isExpected(const TrimPlace& place) {
  const bool cover = place.where == TrimRule::Where::HeaderCover || place.where == TrimRule::Where::JambCover;
  return !cover || place.kind == Opening::Kind::OverheadDoor;
}

}  // namespace ribwright
