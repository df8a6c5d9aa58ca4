// The parts of trimPlaces (trim_places.h): each adds its places of one wall, or of the corners.
#pragma once

#include <vector>

#include "core/takeoff/trim_places.h"

namespace ribwright::trim_places {

using Places = std::vector<TrimPlace>;

void addOpenings(const Wall& wall, const WallLayout& layout, Places& places);
void addTops(const WallLayout& layout, Places& places);
void addBases(const Wall& wall, const WallLayout& layout, Places& places);
void addTransitions(const Wall& wall, const WallLayout& layout, Places& places);
void addCorners(const Job& job, const std::vector<const WallLayout*>& layouts, Places& places);

// A stretch along a wall, left < right.
struct Stretch {
  Length left, right;
};
// `whole` less the openings that stand across the height z, steel to steel: their lower edge at or below z (or they
// reach the floor), their head above it. From the left.
std::vector<Stretch> lessOpenings(const Stretch& whole, Length z, const WallLayout& layout);

}  // namespace ribwright::trim_places
