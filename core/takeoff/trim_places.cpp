#include "core/takeoff/trim_places.h"

#include <map>
#include <stdexcept>

#include "core/job/by_id.h"
#include "core/takeoff/trim_place_parts.h"

namespace ribwright {
namespace {

// 1, 2 ... where a wall has several of one kind.
void number(trim_places::Places& places, std::size_t from) {
  std::map<TrimRule::Where, int> counted, given;
  for (std::size_t i = from; i < places.size(); ++i) ++counted[places[i].where];
  for (std::size_t i = from; i < places.size(); ++i) {
    if (counted[places[i].where] > 1) places[i].number = ++given[places[i].where];
  }
}

void addWall(const Wall& wall, const WallLayout& layout, trim_places::Places& places) {
  trim_places::addOpenings(wall, layout, places);
  const std::size_t first = places.size();
  trim_places::addTops(layout, places);
  trim_places::addBases(wall, layout, places);
  trim_places::addTransitions(wall, layout, places);
  number(places, first);
}

}  // namespace

std::vector<TrimPlace> trimPlaces(const Job& job, const std::vector<const WallLayout*>& layouts) {
  trim_places::Places places;
  for (const WallLayout* layout : layouts) {
    const Wall* wall = byLetter(job.walls, layout->letter);
    if (!wall) throw std::invalid_argument("trim: no wall " + layout->letter);
    if (layout->sheeted) addWall(*wall, *layout, places);
  }
  trim_places::addCorners(job, layouts, places);
  return places;
}

}  // namespace ribwright
