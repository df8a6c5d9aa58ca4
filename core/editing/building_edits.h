// Edits of the building as a whole. Each gives the job as it is afterwards and leaves the one it was given alone.
//
// Walls keep their edges and letters, and what stands on them stays as it was stated: openings at their anchors,
// columns at their bays, girts at their heights. What has no place any more is not lost: the layout goes on without it,
// a finding tells, and displaced() lists it. A top that a wall states itself goes along: its points keep their heights
// and their share of the wall, so that a ridge in the middle stays there and the ends stay on the corners.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/units/outcome.h"

namespace ribwright {

// Of the box round the outline.
struct BuildingSize {
  Length length, width;  // along x, along y
  bool operator==(const BuildingSize&) const = default;
};

// Fault: there is no outline, only free walls.
Outcome<BuildingSize> buildingSize(const Job& job);
// The sides farthest from the plan's origin move, all other corners stay. Faults: a side would come to or past another
// corner; a wall could not be laid out any more (a ridge outside the building).
Outcome<Job> buildingResized(const Job& job, const BuildingSize& size);
// A free wall: its right corner moves along its line. Faults: a wall of the outline; no width; as above.
Outcome<Job> freeWallResized(const Job& job, std::size_t wall, Length width);
// Faults: a wall could not be laid out under it.
Outcome<Job> roofSetTo(const Job& job, const Roof& roof);

struct Displaced {
  enum class Why { OffWall, Overlaps, ColumnGone };
  std::size_t wall;
  std::string id;  // of the opening or penetration
  Why why;
  std::string other;  // Overlaps: what it lies over; else empty
  bool operator==(const Displaced&) const = default;
};
// Wall by wall, in the order of their statements; of two that overlap the later one.
std::vector<Displaced> displaced(const Job& job);

// The opening at the nearest place where it lies on its wall and over no other, on a mark of the tape. It stays
// anchored as it was stated, one whose column is gone from the nearest column there is. Faults: no such opening; no
// such place.
Outcome<Job> openingPutWhereItFits(const Job& job, std::size_t wall, const std::string& id);

}  // namespace ribwright
