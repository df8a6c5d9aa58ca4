#include "core/takeoff/trim_order.h"

#include <algorithm>
#include <compare>
#include <string>

#include "core/job/by_id.h"

namespace ribwright {
namespace {

using Laps = TrimRule::Laps;

// From the foot of an opening upward, within the frame and then on the sheets; covers before what laps them.
int rank(TrimRule::Where where) {
  switch (where) {
    case TrimRule::Where::JambCover:
      return 0;
    case TrimRule::Where::HeaderCover:
      return 1;
    case TrimRule::Where::Sill:
      return 2;
    case TrimRule::Where::Jamb:
      return 3;
    default:
      return 4;
  }
}

bool meet(TrimRule::Where lower, TrimRule::Where upper) { return rank(upper) == rank(lower) + 1 && rank(lower) != 1; }

// Whether the lower of two that meet lies under, by what both say.
bool lowerUnder(const TrimPiece& lower, const TrimPiece& upper) {
  const int says = (lower.laps == Laps::Under) - (lower.laps == Laps::Over) + (upper.laps == Laps::Over) -
                   (upper.laps == Laps::Under);
  return says >= 0;
}

// Base, openings, transitions, eaves, rakes; corners when both walls are sheeted.
int stage(const TrimPlace& place) {
  if (place.isCorner()) return 5;
  switch (place.where) {
    case TrimRule::Where::Base:
      return 0;
    case TrimRule::Where::Transition:
      return 2;
    case TrimRule::Where::Eave:
      return 3;
    case TrimRule::Where::Rake:
      return 4;
    default:
      return 1;
  }
}

struct SettingKey {
  bool corner = false;
  std::size_t wall = 0;
  int stage = 0;
  Length along;  // from the corner where the wall's sheets begin
  std::string opening;
  auto operator<=>(const SettingKey&) const = default;
};

// All of one opening at one place: where its steel is nearest.
Length alongHanging(const WallLayout& layout, const TrimPlace& place) {
  Length left = place.from.u, right = place.to.u;
  if (const CutRegion* cut = place.opening.empty() ? nullptr : byId(layout.cuts, place.opening)) {
    left = *cut->steelLeft;
    right = *cut->steelRight;
  }
  return layout.direction.hand == Hand::LeftToRight ? left : layout.face.width - right;
}

SettingKey keyOf(const TrimPlace& place, const std::vector<const WallLayout*>& layouts) {
  SettingKey key;
  key.corner = place.isCorner();
  if (key.corner) return key;
  const auto wall = std::find_if(layouts.begin(), layouts.end(),
                                 [&](const WallLayout* layout) { return layout->letter == place.wall; });
  key.wall = static_cast<std::size_t>(wall - layouts.begin());
  key.stage = stage(place);
  key.along = alongHanging(**wall, place);
  key.opening = place.opening;
  return key;
}

// Takes, again and again, the first whose neighbours beneath it are all set.
void underFirst(std::vector<TrimPiece>::iterator begin, std::vector<TrimPiece>::iterator end) {
  std::stable_sort(begin, end,
                   [](const TrimPiece& a, const TrimPiece& b) { return rank(a.place.where) < rank(b.place.where); });
  for (auto next = begin; next != end; ++next) {
    const auto isFree = [&](const TrimPiece& piece) {
      return std::none_of(next, end, [&](const TrimPiece& other) { return liesUnder(other, piece); });
    };
    const auto found = std::find_if(next, end, isFree);
    if (found != end) std::rotate(next, found, found + 1);
  }
}

}  // namespace

bool liesUnder(const TrimPiece& under, const TrimPiece& over) {
  const TrimPlace &a = under.place, &b = over.place;
  if (a.opening.empty() || a.opening != b.opening || a.wall != b.wall) return false;
  if (meet(a.where, b.where)) return lowerUnder(under, over);
  return meet(b.where, a.where) && !lowerUnder(over, under);
}

void intoSettingOrder(std::vector<TrimPiece>& pieces, const std::vector<const WallLayout*>& layouts) {
  struct Keyed {
    SettingKey key;
    TrimPiece piece;
  };
  std::vector<Keyed> keyed;
  for (TrimPiece& piece : pieces) keyed.push_back({keyOf(piece.place, layouts), std::move(piece)});
  std::stable_sort(keyed.begin(), keyed.end(), [](const Keyed& a, const Keyed& b) { return a.key < b.key; });
  std::transform(keyed.begin(), keyed.end(), pieces.begin(), [](Keyed& one) { return std::move(one.piece); });
  for (auto begin = pieces.begin(); begin != pieces.end();) {
    const auto end = std::find_if(begin, pieces.end(), [&](const TrimPiece& piece) {
      return piece.place.opening != begin->place.opening || piece.place.wall != begin->place.wall;
    });
    if (!begin->place.opening.empty()) underFirst(begin, end);
    begin = end;
  }
}

}  // namespace ribwright
